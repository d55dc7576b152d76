import { ringArea } from '../geometry/index.ts';
import type { Pattern } from './Pattern.ts';

/**
 * The part of the floor that is joint, 0 to 1.
 *
 * @example jointShareOf({ a: [10, 0], b: [0, 10], tiles: [{ ring: [[0, 0], [9, 0], [9, 9], [0, 9]] }] }).toFixed(2) //=> '0.19'
 */
export function jointShareOf({
  a,
  b,
  tiles,
}: { readonly [Key in 'a' | 'b']: Pattern[Key] } & {
  readonly tiles: readonly Pick<Pattern['tiles'][number], 'ring'>[];
}): number {
  const tiled = tiles.reduce((sum, { ring }) => sum + Math.abs(ringArea(ring)), 0);
  return 1 - tiled / Math.abs(a[0] * b[1] - a[1] * b[0]);
}
