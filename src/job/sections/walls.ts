import * as z from 'zod';
import type { Ticks } from '../../measure/index.ts';
import type { Corner, DiagonalSpec, WallSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { size } from '../values/length.ts';
import { innerAngle } from '../values/numbers.ts';
import type { GivenPrecision } from '../values/precision.ts';
import { wallMiddle } from '../values/wallMiddle.ts';
import { edgeFacts, edgeShape, type Gaps } from './edge.ts';
import { precisionSchema, readingSd } from './measured.ts';
import { type Notes, noteDefault, trouble } from './Notes.ts';

const wallForm = z.strictObject({
  read: listOf(size, 'Every reading you took of this wall, face to face at floor level.'),
  precision: precisionSchema.optional(),
  middle: leaf(
    wallMiddle,
    'Of a bowed or curved wall: where its middle stands off a straight line between its ends, 1/4 in in the room or 6 in out of it.',
  ).optional(),
  ...edgeShape,
});

const wallSchema = z.union([
  listOf(size, 'The reading, or all readings, of this wall.').transform(
    (read): z.output<typeof wallForm> => ({ read }),
  ),
  wallForm,
]);

/** Walls once round with the room on the left; the names of their ends make the corners. */
export const wallsSchema = z
  .record(z.string(), wallSchema)
  .meta({ description: 'Once round, the room on your left: A-B, B-C … back to A.' });

const diagonalForm = z.strictObject({
  read: listOf(size, 'Every reading of this diagonal.'),
  precision: precisionSchema.optional(),
});

const diagonalSchema = z.union([
  listOf(size, 'The reading, or all readings, of this diagonal.').transform(
    (read): z.output<typeof diagonalForm> => ({ read }),
  ),
  diagonalForm,
]);

/** Readings from corner to corner. */
export const diagonalsSchema = z
  .record(z.string(), diagonalSchema)
  .meta({ description: 'Corner to corner, such as A-C. One diagonal at the least makes a check possible.' });

/** Inner angles at corners. */
export const anglesSchema = z
  .record(z.string(), leaf(innerAngle, 'Inner angle in degrees; 90 unless told.'))
  .meta({
    description:
      'Inner angle at a corner, in degrees, where it is not 90: 270 where a corner juts into the room.',
  });

/** The two corner names in a wall's or diagonal's name. */
export function cornersOf(name: string): readonly [string, string] | undefined {
  const form = /^([^\s-]+) *- *([^\s-]+)$/.exec(name);
  return form && form[1] !== form[2] ? [form[1]!, form[2]!] : undefined;
}

/** Walls must follow one another and come back to where they began; each corner is passed once. */
function checkChain(names: readonly string[], path: Path, notes: Notes): void {
  const ends = names.map(cornersOf);
  const found = new Set<string>();
  for (const [i, pair] of ends.entries()) {
    const name = names[i]!;
    const before = ends[i - 1];
    if (!pair) trouble(notes, 'notAWallName', [...path, name], { name }, true);
    else if (before && before[1] !== pair[0])
      trouble(
        notes,
        'wallsDoNotFollow',
        [...path, name],
        { name, before: names[i - 1]!, corner: before[1] },
        true,
      );
    else if (found.has(pair[0])) trouble(notes, 'cornerTwice', [...path, name], { corner: pair[0] }, true);
    if (pair) found.add(pair[0]);
  }
  const [first, last] = [ends[0], ends.at(-1)];
  if (names.length < 3) trouble(notes, 'tooFewWalls', path, { count: names.length }, true);
  else if (first && last && last[1] !== first[0])
    trouble(
      notes,
      'wallsDoNotClose',
      [...path, names.at(-1)!],
      { name: names.at(-1)!, first: first[0], last: last[1] },
      true,
    );
}

/** The standard deviation of readings that have one of their own. */
function ownSd(given: GivenPrecision | undefined, notes: Notes): { readonly sd?: Ticks } {
  return given === undefined || given.by === 'unknown' ? {} : { sd: readingSd(given, notes.system) };
}

/** The walls of a surface in the order walked. */
export function buildWalls(
  given: z.output<typeof wallsSchema>,
  gaps: Gaps,
  path: Path,
  notes: Notes,
): readonly WallSpec[] {
  checkChain(Object.keys(given), path, notes);
  return Object.entries(given).map(([name, wall]) => {
    const [from, to] = cornersOf(name) ?? ['', ''];
    const facts = edgeFacts(wall, { meets: 'wall' }, gaps, [...path, name], notes);
    const own = { ...ownSd(wall.precision, notes), ...(wall.middle && { rise: wall.middle }) };
    return { id: `${from}-${to}`, from, to, readings: wall.read, ...own, ...facts };
  });
}

/** The corners of a surface, with the angles that were told. */
export function buildCorners(
  walls: readonly WallSpec[],
  angles: z.output<typeof anglesSchema> | undefined,
  path: Path,
  notes: Notes,
): readonly Corner[] {
  const names = walls.map(({ from }) => from);
  for (const name of Object.keys(angles ?? {}).filter((corner) => !names.includes(corner)))
    trouble(notes, 'unknownCorner', [...path, name], { name, corners: names.join(', ') }, true);
  const usual = names.filter((name) => angles?.[name] === undefined);
  if (usual.length > 0) noteDefault(notes, [...path, usual.join(', ')], 90);
  return names.map((name) => ({ name, angleDeg: angles?.[name] ?? 90 }));
}

/** The diagonals of a surface; their ends must be corners that no wall joins. */
export function buildDiagonals(
  given: z.output<typeof diagonalsSchema> | undefined,
  corners: readonly Corner[],
  path: Path,
  notes: Notes,
): readonly DiagonalSpec[] {
  const names = corners.map(({ name }) => name);
  return Object.entries(given ?? {}).map(([id, { read, precision }]) => {
    const pair = cornersOf(id);
    const unknown = pair?.find((name) => !names.includes(name));
    if (!pair) trouble(notes, 'notAWallName', [...path, id], { name: id }, true);
    else if (unknown !== undefined)
      trouble(notes, 'unknownCorner', [...path, id], { name: unknown, corners: names.join(', ') }, true);
    const [from, to] = pair ?? ['', ''];
    return { id: `${from}-${to}`, from, to, readings: read, ...ownSd(precision, notes) };
  });
}
