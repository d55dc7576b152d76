/**
 * The largest whole number that divides two others; of 0 and a number that number without its sign.
 *
 * @example commonDivisor(12, -18) //=> 6
 */
export function commonDivisor(one: number, other: number): number {
  return other === 0 ? Math.abs(one) : commonDivisor(other, one % other);
}
