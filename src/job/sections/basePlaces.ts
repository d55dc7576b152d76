import * as z from 'zod';
import type { BasePlace, FlatnessGrid, SurfaceSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { fromKeys, withFrom } from '../shape/withFrom.ts';
import { gridReading } from '../values/gridReading.ts';
import { length, size } from '../values/length.ts';
import { oneOf } from '../values/oneOf.ts';
import { text } from '../values/text.ts';
import { type Notes, trouble } from './Notes.ts';
import { findName, wallName } from './names.ts';

const onFloor = { floor: leaf(text, 'The floor it lies on, where there are several.').optional() };
const distances = listOf(length, 'Distances from this wall, one a point.');
const movement = leaf(oneOf(['still', 'moving']), 'still or moving.');

const crackPlace = withFrom(
  { is: movement, ...onFloor },
  distances,
  'A crack with its points in order: `from A-B: [10 in, 40 in], from D-A: [0 in, 25 in]`.',
);
const hollowPlace = withFrom(
  { across: leaf(size, 'How wide it is.').optional(), ...onFloor },
  distances,
  'A hollow spot: `from A-B: 20 in, from D-A: 30 in, across: 8 in`.',
);

/** Cracks by where they are: a word, or a map that also tells their line. */
export const cracksSchema = z
  .record(z.string(), z.union([movement, crackPlace]))
  .meta({ description: 'Cracks by where they are: `by the hearth: still`.' });

/** Hollow spots by where they are. */
export const hollowSchema = z
  .record(z.string(), hollowPlace)
  .meta({ description: 'Spots that sound hollow, by where they are.' });

/** Flatness readings on a grid. */
export const gridSchema = withFrom(
  {
    every: leaf(size, 'Step from reading to reading, both ways.'),
    heights: z
      .array(z.array(leaf(gridReading, 'Height of the floor over a datum, or none.')).min(1))
      .min(1)
      .meta({ description: 'Rows of heights of the floor over any level datum.' })
      .optional(),
    drops: z
      .array(z.array(leaf(gridReading, 'From a level line down to the floor, or none.')).min(1))
      .min(1)
      .meta({ description: 'The same as distances from a level line down to the floor.' })
      .optional(),
    ...onFloor,
  },
  leaf(length, 'Distance of the first row, or of the first reading in each row, from this wall.'),
  'Flatness readings on a grid: rows run along the wall named first.',
);

interface Walled {
  readonly surface: string;
  readonly walls: readonly [string, string];
}

/** The floor a place lies on and its two walls; undefined with a problem told. */
function wallsOf(
  given: Readonly<Record<string, unknown>>,
  surfaces: readonly SurfaceSpec[],
  path: Path,
  notes: Notes,
): Walled | undefined {
  const asked = given.floor as string | undefined;
  const names = surfaces.map(({ name }) => name);
  const named = asked === undefined ? names[0] : findName(asked, names);
  const floor = surfaces.find(({ name }) => name === named);
  if (asked !== undefined && !floor)
    trouble(notes, 'unknownFloor', [...path, 'floor'], { name: asked, floors: names.join(', ') });
  const keys = fromKeys<unknown>(given);
  const walls = keys.map(({ key, name }) => wallName(name, floor?.walls ?? [], [...path, key], notes, true));
  if (walls.length !== 2) trouble(notes, 'twoWalls', path, { count: walls.length }, true);
  else if (walls[0] === walls[1]) trouble(notes, 'sameWall', path, { wall: walls[0]! }, true);
  return floor && walls.length === 2 ? { surface: floor.name, walls: [walls[0]!, walls[1]!] } : undefined;
}

function placeOf(
  given: Readonly<Record<string, unknown>>,
  surfaces: readonly SurfaceSpec[],
  path: Path,
  least: number,
  notes: Notes,
): BasePlace | undefined {
  const walled = wallsOf(given, surfaces, path, notes);
  const [first = [], second = []] = fromKeys<readonly number[]>(given).map(({ value }) => value);
  if (!walled) return undefined;
  if (first.length !== second.length || first.length < least)
    trouble(notes, 'pointsApart', path, { first: first.length, second: second.length, least }, true);
  return { ...walled, points: first.map((distance, i) => [distance, second[i] ?? Number.NaN]) };
}

/** Cracks, with their lines where they are told. */
export function buildCracks(
  given: z.output<typeof cracksSchema> | undefined,
  surfaces: readonly SurfaceSpec[],
  notes: Notes,
) {
  return Object.entries(given ?? {}).map(([where, crack]) => {
    if (typeof crack === 'string') return { where, moving: crack === 'moving' };
    const line = placeOf(crack, surfaces, ['base', 'cracks', where], 2, notes);
    return { where, moving: crack.is === 'moving', ...(line ? { line } : {}) };
  });
}

/** Hollow spots, with their places where they are told. */
export function buildHollow(
  given: z.output<typeof hollowSchema>,
  surfaces: readonly SurfaceSpec[],
  notes: Notes,
) {
  return Object.entries(given).map(([where, spot]) => {
    const { across } = spot;
    const told = fromKeys(spot).length > 0 || spot.floor !== undefined;
    const at = told ? placeOf(spot, surfaces, ['base', 'hollow', where], 1, notes) : undefined;
    return { where, ...(across === undefined ? {} : { across }), ...(at ? { at } : {}) };
  });
}

/** A grid of readings as heights, higher floor above lower. */
export function buildGrid(
  given: z.output<typeof gridSchema>,
  surfaces: readonly SurfaceSpec[],
  notes: Notes,
): FlatnessGrid | undefined {
  const path = ['base', 'flatness grid'];
  const walled = wallsOf(given, surfaces, path, notes);
  const { heights, drops } = given;
  if ((heights === undefined) === (drops === undefined)) trouble(notes, 'heightsOrDrops', path, {}, true);
  if (!walled) return undefined;
  const [first = Number.NaN, second = Number.NaN] = fromKeys<number>(given).map(({ value }) => value);
  // A floor that is lower lies further below a level line.
  const turned = drops?.map((row) => row.map((drop) => (drop === null ? null : 0 - drop)));
  return { ...walled, first: [first, second], every: given.every, heights: heights ?? turned ?? [] };
}
