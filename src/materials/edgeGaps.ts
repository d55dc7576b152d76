import { type Point, unitAlong } from '../geometry/index.ts';
import type { Left } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import { type EdgeSide, type EdgesOfField, edgeSides } from './edgeSides.ts';

/** An edge with the gap that tile leaves along it: its own, but for where something is left out. Ticks. */
export interface EdgeGap {
  readonly edge: EdgeSide['edge'];
  /** How much of the edge tile runs along. */
  readonly length: number;
  /** Where strips are left out: the widest gap there, along how much of `length`, at how many places. */
  readonly out?: { readonly gap: Ticks; readonly length: number; readonly places: number };
  /** Points of tile left out, each no longer along the wall than the gap is wide: how deep at most, and how many. */
  readonly nicks?: { readonly gap: Ticks; readonly count: number };
}

/** A part of an edge, from and to in ticks along it, with the gap there. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly gap: Ticks;
}

/** The gap along each edge of a field, in the order of its sides; an edge that something lies along everywhere is not among them. */
export function edgeGaps(frame: EdgesOfField, left: readonly Left[]): readonly EdgeGap[] {
  const found = new Map<string, EdgeSide>();
  for (const { edge, length } of edgeSides(frame))
    found.set(edge.id, { edge, length: (found.get(edge.id)?.length ?? 0) + length });
  return [...found.values()].map((side) => {
    const all = left.filter(({ edge, why }) => edge === side.edge.id && why === 'gapOnly');
    return { ...side, ...(all.length > 0 && openings(side, merged(all.map(stretchOn(frame, side))))) };
  });
}

/** Where a left part lies along its edge; beside something round, which has no direction, all of it. */
function stretchOn(frame: EdgesOfField, { edge, length }: EdgeSide) {
  const line = [...frame.edges, ...frame.obstacles.flatMap(({ edges }) => edges)].find(
    ({ id }) => id === edge.id,
  );
  return ({ shape, gap }: Left): Stretch => {
    if (!line) return { from: 0, to: length, gap };
    const [ux, uy] = unitAlong(line.from, line.to);
    const along = shape.outer.map(([x, y]: Point) => (x - line.from[0]) * ux + (y - line.from[1]) * uy);
    return { from: Math.min(...along), to: Math.max(...along), gap };
  };
}

/** What lies nearer together than the gap is wide is one stretch: between strips there is but a joint. */
function merged(stretches: readonly Stretch[]): readonly Stretch[] {
  const result: Stretch[] = [];
  for (const next of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = result.at(-1);
    const gap = Math.max(next.gap, last?.gap ?? 0);
    if (last && next.from - last.to <= gap)
      result.splice(-1, 1, { from: last.from, to: Math.max(last.to, next.to), gap });
    else result.push(next);
  }
  return result;
}

const widest = (stretches: readonly Stretch[]) => Math.max(...stretches.map(({ gap }) => gap));

/** Stretches longer than their gap is wide are joint, the others nicks. What is left of the edge at its two ends is no joint of its own. */
function openings({ length }: EdgeSide, stretches: readonly Stretch[]): Pick<EdgeGap, 'out' | 'nicks'> {
  const isNick = ({ from, to, gap }: Stretch) => to - from <= gap;
  const [out, nicks] = [stretches.filter((one) => !isNick(one)), stretches.filter(isNick)];
  const sum = out.reduce((total, { from, to }) => total + to - from, 0);
  return {
    ...(out.length > 0 && {
      out: {
        gap: widest(out),
        length: length - sum <= 2 * widest(out) ? length : sum,
        places: out.length,
      },
    }),
    ...(nicks.length > 0 && { nicks: { gap: widest(nicks), count: nicks.length } }),
  };
}
