/** What tells which tiles a floor is made of. */
interface TilesOf {
  readonly pattern: { readonly tiles: readonly { readonly tile: string }[] };
  readonly border?: { readonly courses: readonly { readonly tile: string }[] };
  readonly inlays?: readonly { readonly tiles: readonly string[] }[];
}

/**
 * Keys of the tiles of a floor: those of its pattern in its own order, then those that only its border and its inlays have.
 *
 * @example tilesLaid({ pattern: { tiles: [{ tile: 'a' }] }, border: { courses: [{ tile: 'b' }, { tile: 'a' }] } }) //=> ['a', 'b']
 */
export function tilesLaid({ pattern, border, inlays = [] }: TilesOf): readonly string[] {
  const own = [...pattern.tiles, ...(border?.courses ?? [])].map(({ tile }) => tile);
  return [...new Set([...own, ...inlays.flatMap(({ tiles }) => tiles)])];
}
