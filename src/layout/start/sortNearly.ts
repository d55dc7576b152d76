/**
 * A list by a value, largest first, in groups. What is within `same` of the first of its group counts as equal to it: a tick of
 * rounding must not decide.
 *
 * @example groupNearly([8, 10, 9, 3], (n) => n, 1) //=> [[10, 9], [8], [3]]
 */
export function groupNearly<T>(list: readonly T[], value: (one: T) => number, same: number): T[][] {
  const left = [...list].sort((a, b) => value(b) - value(a));
  const groups: T[][] = [];
  while (left.length > 0) {
    const best = value(left[0]!);
    const after = left.findIndex((one) => value(one) < best - same);
    groups.push(left.splice(0, after < 0 ? left.length : after));
  }
  return groups;
}

/**
 * A list by a value, largest first; what counts as equal goes by `then`.
 *
 * @example sortNearly([8, 10, 9, 3], (n) => n, 1, (a, b) => a - b) //=> [9, 10, 8, 3]
 */
export function sortNearly<T>(
  list: readonly T[],
  value: (one: T) => number,
  same: number,
  then: (a: T, b: T) => number,
): T[] {
  return groupNearly(list, value, same).flatMap((group) => group.sort(then));
}
