/** From so many on, names that follow evenly are told by their first and last; every other one by its first two. */
const FEWEST = { each: 3, other: 4 } as const;
const STEPS = { each: 1, other: 2 } as const;

/** How many of the places from the first on follow by a step. */
function runBy(step: number, places: readonly number[], from: number): number {
  let count = 1;
  while (places[from + count] === places[from]! + count * step) count += 1;
  return count;
}

/**
 * Some of the names of a list, told so that no other is among them: those that follow one another by their first and last, every other
 * one by its first two and its last.
 *
 * @param names some of `all`, in its order.
 * @example rowRanges(['K1', 'K2', 'K3'], ['K1', 'K2', 'K3', 'K4']) //=> 'K1 … K3'
 * @example rowRanges(['K1', 'K3', 'K5', 'K7'], ['K1', 'K2', 'K3', 'K4', 'K5', 'K6', 'K7']) //=> 'K1, K3 … K7'
 * @example rowRanges(['K1', 'K2', 'K3', 'K6'], ['K1', 'K2', 'K3', 'K4', 'K5', 'K6']) //=> 'K1 … K3, K6'
 */
export function rowRanges(names: readonly string[], all: readonly string[]): string {
  const places = names.map((name) => all.indexOf(name));
  const parts: string[] = [];
  for (let i = 0; i < names.length; ) {
    const each = runBy(STEPS.each, places, i);
    const other = runBy(STEPS.other, places, i);
    if (each >= FEWEST.each) {
      parts.push(`${names[i]} … ${names[i + each - 1]}`);
      i += each;
    } else if (other >= FEWEST.other) {
      parts.push(`${names[i]}, ${names[i + 1]} … ${names[i + other - 1]}`);
      i += other;
    } else {
      parts.push(names[i]!);
      i += 1;
    }
  }
  return parts.join(', ');
}
