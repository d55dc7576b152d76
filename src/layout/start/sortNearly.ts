/**
 * A list by a value, largest first. What is within `same` of the first of its group counts as equal and goes by `then`: a tick of
 * rounding must not decide.
 *
 * @example sortNearly([8, 10, 9, 3], (n) => n, 1, (a, b) => a - b) //=> [9, 10, 8, 3]
 */
export function sortNearly<T>(
  list: readonly T[],
  value: (one: T) => number,
  same: number,
  then: (a: T, b: T) => number,
): T[] {
  const left = [...list].sort((a, b) => value(b) - value(a));
  const order: T[] = [];
  while (left.length > 0) {
    const best = value(left[0]!);
    const after = left.findIndex((one) => value(one) < best - same);
    order.push(...left.splice(0, after < 0 ? left.length : after).sort(then));
  }
  return order;
}
