import type { Point } from '../../../geometry/index.ts';
import type { Repeat } from '../search/leastRepeat.ts';

/** Shares by which each next place is further on in the repeat, on one axis or on both: then any number of the first lies evenly. */
const FURTHER = { one: 0.6180339887, both: [0.7548776662, 0.5698402909] } as const;

/** Repeats that differ by less than this, in ticks, differ by rounding and by tiles that are no whole number of widths long. */
const NEARLY = 160;

/**
 * Moves of a pattern all over its repeat, so many of them, the first none at all; on one axis only where the other is held.
 *
 * @example spreadMoves({ a: [100, 0], b: [0, 1000] }, [false, true], 3) //=> [[0, 0], [0, 618], [0, 236]]
 */
export function spreadMoves(
  { a, b }: Pick<Repeat, 'a' | 'b'>,
  free: readonly boolean[],
  count: number,
): readonly Point[] {
  const numbers = Array.from({ length: count }, (_, i) => i);
  if (free[0] && free[1]) {
    const [first, second] = FURTHER.both;
    return numbers.map((i): Point => {
      const [u, v] = [(i * first) % 1, (i * second) % 1];
      return [Math.round(u * a[0] + v * b[0]), Math.round(u * a[1] + v * b[1])];
    });
  }
  const axis = free[0] ? 0 : 1;
  const area = Math.abs(a[0] * b[1] - a[1] * b[0]);
  const repeat = area / nearlyCommon(Math.abs(a[1 - axis]!), Math.abs(b[1 - axis]!));
  return numbers.map((i): Point => {
    const by = Math.round(((i * FURTHER.one) % 1) * repeat);
    return axis === 0 ? [by, 0] : [0, by];
  });
}

/** The largest length of which both are nearly multiples. */
function nearlyCommon(one: number, other: number): number {
  let [large, small] = one > other ? [one, other] : [other, one];
  while (small > NEARLY) {
    const left = Math.abs(large - Math.round(large / small) * small);
    [large, small] = [small, left];
  }
  return large;
}
