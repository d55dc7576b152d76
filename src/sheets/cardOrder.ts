/** A card by its number, with the cuts from whose offcuts its pieces come. */
export interface OrderedCard {
  readonly number: number;
  readonly from: readonly number[];
}

/**
 * Cards in the order in which they can be sawn: by number, but each after those from whose offcuts it comes, and last those that wait for a
 * cut that has no card. Where two wait for one another the lower number is first.
 *
 * @example cardOrder([{ number: 1, from: [3] }, { number: 2, from: [] }, { number: 3, from: [] }]).map(({ number }) => number) //=> [2, 3, 1]
 * @example cardOrder([{ number: 1, from: [9] }, { number: 2, from: [] }]).map(({ number }) => number) //=> [2, 1]
 */
export function cardOrder<T extends OrderedCard>(cards: readonly T[]): readonly T[] {
  const own = new Set(cards.map(({ number }) => number));
  const waits = ({ from }: OrderedCard) => from.some((number) => !own.has(number));
  const done: T[] = [];
  let left = [...cards.filter((card) => !waits(card)), ...cards.filter(waits)];
  while (left.length > 0) {
    const open = new Set(left.map(({ number }) => number));
    const next =
      left.find(({ number, from }) => from.every((one) => one === number || !open.has(one))) ?? left[0]!;
    done.push(next);
    left = left.filter((card) => card !== next);
  }
  return done;
}
