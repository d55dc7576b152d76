import { type Box, boxOf, overlap, within } from './boxes.ts';
import { clipRing } from './clipRing.ts';
import type { AreaMark, CircleMark, Mark, PathMark, Spot, Step } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { clipSegment } from './template/clipSegment.ts';
import { path } from './text.ts';

/** An arc that is cut off is drawn by chords of at most this angle, which no eye tells from the arc on paper. */
const chord = Math.PI / 48;

function straightened(steps: readonly Step[]): readonly Spot[] {
  return steps.flatMap((step): readonly Spot[] => {
    if (!('centre' in step)) return [step];
    const { centre, radius, from, to } = step;
    const count = Math.max(1, Math.ceil(Math.abs(to - from) / chord));
    return Array.from({ length: count }, (_, i): Spot => {
      const angle = from + ((to - from) * (i + 1)) / count;
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    });
  });
}

function clipLine(spots: readonly Spot[], line: PathMark['line'], box: Box): readonly Mark[] {
  return spots.slice(1).flatMap((spot, i) => {
    const part = clipSegment(spots[i]!, spot, box);
    return part ? [path(part, line)] : [];
  });
}

/** The part of the area is filled, and only those of its edges are drawn that are its own. */
function clipArea({ rings, line, fill }: AreaMark, box: Box): readonly Mark[] {
  const flat = rings.map(straightened);
  const inner = flat.map((ring) => clipRing(ring, box)).filter((ring) => ring.length > 2);
  const area: readonly Mark[] = fill && inner.length > 0 ? [{ mark: 'area', rings: inner, fill }] : [];
  const edges = line ? flat.flatMap((ring) => clipLine([...ring, ring[0]!], line, box)) : [];
  return [...area, ...edges];
}

function asArea({ centre, radius, line, fill }: CircleMark): AreaMark {
  const start: Spot = [centre[0] + radius, centre[1]];
  const ring: readonly Step[] = [start, { centre, radius, from: 0, to: 2 * Math.PI }];
  return { mark: 'area', rings: [ring], ...(line ? { line } : {}), ...(fill ? { fill } : {}) };
}

function clipMark(mark: Mark, box: Box): readonly Mark[] {
  const bounds = markBounds([mark]);
  if (within(bounds, box)) return [mark];
  if (mark.mark === 'text' || mark.mark === 'figure' || !overlap(bounds, box)) return [];
  if (mark.mark === 'path') return clipLine(straightened(mark.steps), mark.line, box);
  return clipArea(mark.mark === 'circle' ? asArea(mark) : mark, box);
}

/** What of the marks lies in a box. An edge along which a mark is cut off is no line of it; words are kept whole or not at all. */
export function clipMarks(marks: readonly Mark[], box: Box): readonly Mark[] {
  return marks.flatMap((mark) => clipMark(mark, box));
}

/** Whether a ring comes near a box at all. */
export function ringMeets(ring: readonly Spot[], box: Box): boolean {
  return overlap(boxOf(ring), box);
}
