import type { TileSpec } from '../Job.ts';
import { likelyFigures } from '../shape/likely.ts';
import type { Path } from '../shape/Trouble.ts';
import { type Notes, trouble } from './Notes.ts';
import { findName } from './names.ts';

/** The key of a tile by its name in the file, the first tile's where there is none; a name that no tile has is told. */
export function tileKey(
  name: string | undefined,
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): string {
  const keys = tiles.map(({ key }) => key);
  if (name === undefined) return keys[0] ?? '';
  const found = findName(name, keys);
  if (found === undefined && keys.length > 0)
    trouble(notes, 'unknownTile', path, { name, tiles: keys.join(', '), ...likelyFigures(name, keys) });
  return found ?? name;
}
