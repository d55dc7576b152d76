import { isConvex, type Ring, type Shape, side } from '../../geometry/index.ts';

/** A bend no deeper than this, in ticks, is rounding: no saw makes it. */
const ROUNDING = 2;

/**
 * Whether a piece has straight cuts only: no hole, and no corner that stands into it.
 *
 * @example isPlain({ outer: [[0, 0], [90, 0], [90, 50], [40, 50], [40, 90], [0, 90]], holes: [] }) //=> false
 * @example isPlain({ outer: [[0, 0], [90, 0], [90, 50], [45, 49], [0, 50]], holes: [] }) //=> true
 */
export function isPlain({ outer, holes }: Shape): boolean {
  return holes.length === 0 && (isConvex(outer) || isConvex(straightened(outer)));
}

function straightened(ring: Ring): Ring {
  const n = ring.length;
  return ring.filter((point, i) => {
    const [before, after] = [ring[(i + n - 1) % n]!, ring[(i + 1) % n]!];
    const off = Math.abs(side(before, after, point)) / Math.hypot(after[0] - before[0], after[1] - before[1]);
    return off > ROUNDING;
  });
}
