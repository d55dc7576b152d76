import type { PatternAlong, TileSpec, WallSpec } from '../Job.ts';
import { likelyFigures } from '../shape/likely.ts';
import type { Path } from '../shape/Trouble.ts';
import type { LineWish } from '../values/patternLine.ts';
import { type Notes, trouble } from './Notes.ts';
import { findName, wallName } from './names.ts';

/** What a pattern lies among: the walls of its floor, everything there that has a name, and how much a focal wall counts. */
export interface Around {
  readonly walls: readonly WallSpec[];
  readonly names: readonly string[];
  readonly focalWeight: number;
}

/** The wall or line that a pattern is square to, the first wall unless told; `tile` is that of the pattern. */
export function buildAlong(
  wish: LineWish | undefined,
  around: Around,
  tile: TileSpec | undefined,
  path: Path,
  notes: Notes,
): PatternAlong {
  const { walls, focalWeight } = around;
  const first = walls[0]?.id ?? '';
  if (wish === undefined) return first;
  if (typeof wish === 'string')
    return diagonal(wish, walls, path, notes) ?? wallName(wish, walls, path, notes);
  if (wish.kind === 'sight') return sight(wish, around, path, notes);
  const near = wish.near === undefined ? first : wallName(wish.near, walls, path, notes);
  return { kind: 'shared', near, least: tile ? Math.min(tile.length, tile.width) : 0, focalWeight };
}

/** A name of two corners that no wall joins is told as the line between them; undefined for any other. */
function diagonal(name: string, walls: readonly WallSpec[], path: Path, notes: Notes): string | undefined {
  const ids = walls.map(({ id }) => id);
  if (findName(name, ids) !== undefined) return undefined;
  const corners = walls.map(({ from }) => from);
  const [from, to] = name.split('-').map((corner) => findName(corner, corners));
  if (from === undefined || to === undefined || from === to) return undefined;
  trouble(notes, 'unknownWall', path, {
    name,
    walls: ids.join(', '),
    near: 'yes',
    likely: `from ${from} to ${to}`,
  });
  return name;
}

function sight(
  { from, to }: Extract<LineWish, { kind: 'sight' }>,
  { walls, names }: Around,
  path: Path,
  notes: Notes,
): PatternAlong {
  const places = [...walls.map((wall) => wall.from), ...names];
  const ends = [from, to].map((name) => placeName(name, places, path, notes)) as [string, string];
  if (ends[0] === ends[1]) trouble(notes, 'lineOfOnePlace', path, { name: ends[0] });
  return { kind: 'sight', from: ends[0], to: ends[1] };
}

function placeName(name: string, places: readonly string[], path: Path, notes: Notes): string {
  const found = findName(name, places);
  if (found === undefined && places.length > 0)
    trouble(notes, 'unknownPlace', path, { name, names: places.join(', '), ...likelyFigures(name, places) });
  return found ?? name;
}
