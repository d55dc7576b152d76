import * as z from 'zod';
import { printLength } from '../../measure/index.ts';
import type { BorderCourse, TileSpec, WallSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { oneOf } from '../values/oneOf.ts';
import { openWidth } from '../values/openWidth.ts';
import { text } from '../values/text.ts';
import { type Notes, orDefault, trouble } from './Notes.ts';
import { wallName } from './names.ts';
import { tileKey } from './tileKey.ts';

const corners = oneOf(['mitred', 'butted']);
const hand = oneOf(['right', 'left']);

/** Courses along the walls round the field, from the wall inwards. */
export const borderSchema = z
  .array(
    z
      .strictObject({
        tile: leaf(text, 'Name of the tile; its length runs along the wall.').optional(),
        width: leaf(
          openWidth,
          "What of the tile's width it takes, factory edge to the field; all of it unless told. `solve`: so that the field ends on whole or half tiles; `solve between A-B and C-D`: along these walls.",
        ).optional(),
        corners: leaf(corners, 'mitred or butted.').optional(),
        'runs through': leaf(
          hand,
          'Of butted corners: left or right, the end at which each side runs through, as you face its wall from the room.',
        ).optional(),
      })
      .meta({ description: 'One course of the border.' }),
  )
  .meta({ description: 'Courses along the walls round the field, from the wall inwards.' });

/** The courses of a border with their defaults; undefined where there is none. */
export function buildBorder(
  given: z.output<typeof borderSchema> | undefined,
  { tiles, walls }: { readonly tiles: readonly TileSpec[]; readonly walls: readonly WallSpec[] },
  path: Path,
  notes: Notes,
): readonly BorderCourse[] | undefined {
  if (!given || given.length === 0) return undefined;
  if (given.filter(({ width }) => isOpen(width)).length > 1) trouble(notes, 'borderTwice', path, {}, true);
  return given.map((one, i) => {
    const at = [...path, i];
    const key = tileKey(one.tile, tiles, [...at, 'tile'], notes);
    const tile = tiles.find((tile) => tile.key === key);
    const own = tile ? printLength(tile.width, notes.system) : 'solve';
    const width = withWalls(
      orDefault(notes, one.width, [...at, 'width'], own, openWidth),
      walls,
      [...at, 'width'],
      notes,
    );
    if (tile) checkTile(tile, one.width === undefined ? tile.width : width, at, notes);
    return {
      tile: key,
      width: one.width === undefined && tile ? tile.width : width,
      ...cornersOf(one, at, notes),
    };
  });
}

function isOpen(width: BorderCourse['width'] | undefined): boolean {
  return width !== undefined && typeof width !== 'number';
}

/** A width with the walls it is worked out between as the floor names them. */
function withWalls(
  width: BorderCourse['width'],
  walls: readonly WallSpec[],
  path: Path,
  notes: Notes,
): BorderCourse['width'] {
  if (typeof width !== 'object') return width;
  const [one, other] = width.between;
  return { between: [wallName(one, walls, path, notes), wallName(other, walls, path, notes)] };
}

/** How the corners of a course are made; which side runs through is asked of butted ones alone. */
function cornersOf(
  one: z.output<typeof borderSchema>[number],
  at: Path,
  notes: Notes,
): Pick<BorderCourse, 'corners' | 'through'> {
  const made = orDefault(notes, one.corners, [...at, 'corners'], 'mitred', corners);
  const through = [...at, 'runs through'];
  if (made === 'butted')
    return { corners: made, through: orDefault(notes, one['runs through'], through, 'right', hand) };
  if (one['runs through'] !== undefined) trouble(notes, 'borderThrough', through, {}, true);
  return { corners: made };
}

/** A course is made of rectangles, and no wider than they are. */
function checkTile(tile: TileSpec, width: BorderCourse['width'], path: Path, notes: Notes): void {
  if (tile.shape) trouble(notes, 'borderShape', [...path, 'tile'], { tile: tile.name, is: tile.shape.kind });
  else if (typeof width === 'number' && width > tile.width)
    trouble(notes, 'borderWidth', [...path, 'width'], {
      tile: tile.name,
      width: printLength(width, notes.system),
      most: printLength(tile.width, notes.system),
    });
}
