/** Does some work on each item, as many at once as there are processors to spare; results in the order of the items. */
export async function atOnce<Item, Result>(
  items: readonly Item[],
  work: (item: Item) => Promise<Result>,
  many = 2,
): Promise<readonly Result[]> {
  const results: Result[] = [];
  const waiting = [...items.entries()];
  const worker = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) results[next[0]] = await work(next[1]);
  };
  await Promise.all(Array.from({ length: many }, worker));
  return results;
}
