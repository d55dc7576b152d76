import { bounds, type Point, type Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { WideJoint } from '../movement/WideJoint.ts';

/** A part of the pattern between wide joints, from and to places in the pattern as it repeats, and how far it is moved, in ticks. */
export interface Bay {
  readonly from: Point;
  readonly to: Point;
  readonly shift: Point;
}

/** The whole of a pattern that has no wide joints. */
export const WHOLE: Bay = { from: [-Infinity, -Infinity], to: [Infinity, Infinity], shift: [0, 0] };

/** The bays into which wide joints part a pattern: one where there are none. */
export function baysOf(wide: readonly WideJoint[]): readonly Bay[] {
  if (wide.length === 0) return [WHOLE];
  const [along, across] = ([0, 1] as const).map((axis) => stretches(wide.filter((one) => one.axis === axis)));
  return along!.flatMap((x) =>
    across!.map((y): Bay => ({ from: [x.from, y.from], to: [x.to, y.to], shift: [x.shift, y.shift] })),
  );
}

/** Whether a tile in the pattern as it repeats belongs to a bay. */
export function isInBay({ from, to }: Bay, ring: Ring): boolean {
  const { minX, minY, maxX, maxY } = bounds(ring);
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  return x > from[0] && x < to[0] && y > from[1] && y < to[1];
}

function stretches(
  wide: readonly WideJoint[],
): readonly { readonly from: Ticks; readonly to: Ticks; readonly shift: Ticks }[] {
  const ends = wide.map(({ at }) => at);
  return [-Infinity, ...ends].map((from, i) => ({
    from,
    to: ends[i] ?? Infinity,
    shift: wide.slice(0, i).reduce((sum, { extra }) => sum + extra, 0),
  }));
}
