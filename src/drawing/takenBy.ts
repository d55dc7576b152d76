import { type Box, boxOf, boxRound } from './boxes.ts';
import type { Mark, Spot, Step } from './Mark.ts';
import { textBox } from './textBox.ts';

/** What is already on the paper: boxes no words may touch, and lines they should not lie on. */
export interface Taken {
  readonly boxes: readonly Box[];
  readonly lines: readonly (readonly [Spot, Spot])[];
  /** The paper, where words must not leave it. */
  readonly paper?: Box;
}

const isSpot = (step: Step): step is Spot => !('centre' in step);

function boxesOf(mark: Mark): readonly Box[] {
  if (mark.mark === 'text' || mark.mark === 'figure') return [textBox(mark)];
  if (mark.mark === 'circle' && mark.fill) return [boxRound(mark.centre, 2 * mark.radius, 2 * mark.radius)];
  if (mark.mark === 'area' && (mark.fill === 'paper' || mark.fill === 'ink'))
    return [boxOf(mark.rings.flat().filter(isSpot))];
  return [];
}

function sides(steps: readonly Step[], closed: boolean): readonly (readonly [Spot, Spot])[] {
  const spots = steps.filter(isSpot);
  const pairs = spots.slice(1).map((spot, i) => [spots[i]!, spot] as const);
  return closed && spots.length > 2 ? [...pairs, [spots.at(-1)!, spots[0]!]] : pairs;
}

/** What the marks take: words, circles, flags and arrow heads as boxes; open lines, and outlines where asked, as lines. */
export function takenBy(marks: readonly Mark[], outlines = false): Taken {
  const lines = marks.flatMap((mark) => {
    if (mark.mark === 'path') return sides(mark.steps, false);
    return mark.mark === 'area' && outlines ? mark.rings.flatMap((ring) => sides(ring, true)) : [];
  });
  return { boxes: marks.flatMap(boxesOf), lines };
}
