import type { Point } from '../geometry/index.ts';

export interface ClosedTraverse {
  /** The legs corrected: they sum to nothing. */
  readonly legs: readonly Point[];
  /** The sum of the legs as measured: where the walk ends, seen from where it began. */
  readonly misclosure: Point;
}

/**
 * Closes a walk by the compass (Bowditch) rule: each leg takes a share of the misclosure in proportion to its
 * measured length. Any unit; legs are [departure, latitude] or [x, y].
 *
 * Source: the rule as stated in the United States Navy's Engineering Aid, NAVEDTRA 14071, chapter 7.
 *
 * @example
 * compassRule([[3, 0], [0, 4], [-2, -4]], [3, 4, 5]).misclosure //=> [1, 0]
 * compassRule([[3, 0], [0, 4], [-2, -4]], [3, 4, 5]).legs[0] //=> [2.75, 0]
 */
export function compassRule(legs: readonly Point[], lengths: readonly number[]): ClosedTraverse {
  const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  const [x, y] = [total(legs.map((leg) => leg[0])), total(legs.map((leg) => leg[1]))];
  const walk = total(lengths);
  const corrected = legs.map((leg, i): Point => {
    const share = lengths[i]! / walk;
    return [leg[0] - share * x, leg[1] - share * y];
  });
  return { legs: corrected, misclosure: [x, y] };
}
