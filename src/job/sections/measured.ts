import * as z from 'zod';
import type { System, Ticks } from '../../measure/index.ts';
import type { BaseLineSpec, Corner, CornerCheckSpec, DiagonalSpec, Precision, WallSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import { likelyFigures } from '../shape/likely.ts';
import type { Path } from '../shape/Trouble.ts';
import { cornerCheck } from '../values/cornerCheck.ts';
import { length, size } from '../values/length.ts';
import { pair } from '../values/pair.ts';
import { type GivenPrecision, precision } from '../values/precision.ts';
import { sidedLength } from '../values/sidedLength.ts';
import { text } from '../values/text.ts';
import { type Notes, noteDefault, trouble } from './Notes.ts';
import { findName } from './names.ts';

/** How exact readings are. */
export const precisionSchema = leaf(
  precision,
  'How exact one reading is: tape, laser, a length, or unknown.',
);

/** Standard deviations of one reading: tape 1/8 in or 3 mm, laser 1/16 in or 1.5 mm. Common practice, no source. */
const USUAL: Readonly<Record<System, { readonly tape: Ticks; readonly laser: Ticks }>> = {
  inches: { tape: 1016, laser: 508 },
  mm: { tape: 960, laser: 480 },
};

/** The standard deviation behind a word; readings of unknown precision weigh like those of a tape. */
export function readingSd(given: GivenPrecision, system: System): Ticks {
  if (given.by === 'stated') return given.sd;
  return USUAL[system][given.by === 'laser' ? 'laser' : 'tape'];
}

/** The precision of a surface's readings: a tape's unless told. */
export function buildPrecision(given: GivenPrecision | undefined, path: Path, notes: Notes): Precision {
  if (!given) noteDefault(notes, path, 'tape');
  const used = given ?? { by: 'tape' };
  return { kind: used.by === 'unknown' ? 'unknown' : 'stated', sd: readingSd(used, notes.system) };
}

const checkForm = z.strictObject({
  legs: leaf(pair, 'Marks on the wall that comes to the corner x on the one that leaves it.'),
  read: listOf(size, 'Every reading between the two marks.'),
});

/** A value that cannot be read is marked in its place, so it is kept whole until the marks are settled. */
const checkText = leaf(
  cornerCheck,
  'Marks on the two walls and the distance between them: 36 in x 48 in = 60 in.',
).transform((check) => ({ check }));

/** Corners checked by two marks and the distance between them. */
export const cornerChecksSchema = z
  .record(z.string(), z.union([checkText, checkForm]))
  .meta({ description: 'How square a corner is: two marks and the distance between them.' });

/** Corners measured from a snapped line. */
export const baseLineSchema = z
  .record(
    z.string(),
    z.tuple([
      leaf(length, 'Along the line, from where its zero is.'),
      leaf(sidedLength, 'Square off the line; with a minus on its other side.'),
    ]),
  )
  .meta({ description: 'Corners from a snapped line: how far along it, and how far square off it.' });

/** Readings that take no part. */
export const setAsideSchema = listOf(text, 'A reading that is not used, such as A-C.');

/** Tells of a name that no corner of the surface has. */
function checkCorner(name: string, corners: readonly Corner[], path: Path, notes: Notes): void {
  const names = corners.map((corner) => corner.name);
  if (names.includes(name)) return;
  trouble(notes, 'unknownCorner', [...path, name], { name, corners: names.join(', ') }, true);
}

/** The corner checks of a surface. */
export function buildCornerChecks(
  given: z.output<typeof cornerChecksSchema> | undefined,
  corners: readonly Corner[],
  path: Path,
  notes: Notes,
): readonly CornerCheckSpec[] {
  return Object.entries(given ?? {}).map(([corner, check]) => {
    checkCorner(corner, corners, path, notes);
    if ('legs' in check) return { corner, legs: check.legs, readings: check.read };
    return { corner, legs: check.check.legs, readings: [check.check.diagonal] };
  });
}

/** What was read from a snapped line. */
export function buildBaseLine(
  given: z.output<typeof baseLineSchema> | undefined,
  corners: readonly Corner[],
  path: Path,
  notes: Notes,
): readonly BaseLineSpec[] {
  return Object.entries(given ?? {}).map(([corner, [along, off]]) => {
    checkCorner(corner, corners, path, notes);
    return { corner, along, off };
  });
}

/** Readings set aside, by their ids; a name that no reading has is told. */
export function buildSetAside(
  given: readonly string[] | undefined,
  read: {
    readonly walls: readonly WallSpec[];
    readonly diagonals: readonly DiagonalSpec[];
    readonly cornerChecks: readonly CornerCheckSpec[];
    readonly baseLine: readonly BaseLineSpec[];
  },
  path: Path,
  notes: Notes,
): readonly string[] {
  const ids = [
    ...[...read.walls, ...read.diagonals].map(({ id }) => id),
    ...read.cornerChecks.map(({ corner }) => corner),
    ...read.baseLine.flatMap(({ corner }) => [`${corner}:along`, `${corner}:off`]),
  ];
  return (given ?? []).flatMap((name, i) => {
    const found = findName(name, ids);
    if (found !== undefined) return [found];
    const figures = { name, readings: ids.join(', '), ...likelyFigures(name, ids) };
    trouble(notes, 'unknownReading', [...path, i], figures);
    return [];
  });
}
