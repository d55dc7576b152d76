/** What tells which tiles a floor is made of. */
interface TilesOf {
  readonly pattern: { readonly tiles: readonly { readonly tile: string }[] };
  readonly border?: { readonly courses: readonly { readonly tile: string }[] };
}

/**
 * Keys of the tiles of a floor: those of its pattern in its own order, then those that only its border has.
 *
 * @example tilesLaid({ pattern: { tiles: [{ tile: 'a' }] }, border: { courses: [{ tile: 'b' }, { tile: 'a' }] } }) //=> ['a', 'b']
 */
export function tilesLaid({ pattern, border }: TilesOf): readonly string[] {
  return [...new Set([...pattern.tiles, ...(border?.courses ?? [])].map(({ tile }) => tile))];
}
