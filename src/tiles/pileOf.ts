/**
 * The most offcuts that wait at a time: tiles of which a piece is set and another is not yet.
 *
 * @param tiles for each, when its pieces are set, in any order.
 * @example pileOf([[0, 3], [1, 2], [4]]) //=> 2
 */
export function pileOf(tiles: readonly (readonly number[])[]): number {
  const changes = new Map<number, number>();
  const change = (at: number, by: number) => changes.set(at, (changes.get(at) ?? 0) + by);
  for (const when of tiles) {
    change(Math.min(...when), 1);
    change(Math.max(...when), -1);
  }
  let [pile, most] = [0, 0];
  for (const at of [...changes.keys()].sort((a, b) => a - b)) {
    pile += changes.get(at)!;
    most = Math.max(most, pile);
  }
  return most;
}

/** How long offcuts wait in all, counted in pieces set between the first and the last out of each tile. */
export function waitOf(tiles: readonly (readonly number[])[]): number {
  return tiles.reduce((sum, when) => sum + Math.max(...when) - Math.min(...when), 0);
}
