import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { apartOf, type JointLine, type Stretch } from './chalkLine.ts';

/** Two joint lines that cross on open floor. */
export interface Crossing {
  readonly crossing: Point;
  readonly stretches: readonly [Stretch, Stretch];
  /** Lines without two marks far enough apart, and those whose marks lie much nearer than others' do. */
  readonly unmarked: number;
  readonly short: number;
  readonly off: number;
}

/** Marks nearer together than this share of the farthest of that axis make a line worse, not only shorter. */
const SHORT = 0.75;

/**
 * The pair to snap: both with two marks that a tape can reach, if there are such; marks as far apart as that
 * axis offers, or nearly; then nearest to the middle of the longest runs, where cuts are balanced from.
 */
export function bestCrossing(
  upright: readonly JointLine[],
  level: readonly JointLine[],
  middle: Point,
  least: Ticks,
): Crossing | undefined {
  const [high, wide] = [farthest(upright), farthest(level)];
  let best: Crossing | undefined;
  for (const one of upright) {
    for (const other of level) {
      const along = one.stretches.find(({ from, to }) => from[1] < other.at && other.at < to[1]);
      const across = other.stretches.find(({ from, to }) => from[0] < one.at && one.at < to[0]);
      if (!along || !across) continue;
      const apart = [apartOf(along), apartOf(across)] as const;
      const found: Crossing = {
        crossing: [one.at, other.at],
        stretches: [along, across],
        unmarked: apart.filter((length) => length < least).length,
        short: Number(apart[0] < SHORT * high) + Number(apart[1] < SHORT * wide),
        off: Math.abs(one.at - middle[0]) + Math.abs(other.at - middle[1]),
      };
      if (!best || isBetter(found, best)) best = found;
    }
  }
  return best;
}

function isBetter(a: Crossing, b: Crossing): boolean {
  return (a.unmarked - b.unmarked || a.short - b.short || a.off - b.off) < 0;
}

function farthest(lines: readonly JointLine[]): number {
  return Math.max(0, ...lines.flatMap(({ stretches }) => stretches.map(apartOf)));
}
