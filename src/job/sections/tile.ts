import * as z from 'zod';
import { mean, printLength, spread, TICKS_PER_64TH, type Ticks } from '../../measure/index.ts';
import { dryRow } from '../dryRow.ts';
import type { TileSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import { date } from '../values/calendarValues.ts';
import { length, size } from '../values/length.ts';
import { count, friction, price, some } from '../values/numbers.ts';
import { oneOf } from '../values/oneOf.ts';
import { pair } from '../values/pair.ts';
import { text } from '../values/text.ts';
import { tileRun } from '../values/tileRun.ts';
import { yesNo } from '../values/yesNo.ts';
import { chipsOf, sheetReadings } from './mosaic.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { type Shaped, shapeOf, tileShapes } from './tileShape.ts';

const edge = oneOf(['rectified', 'calibrated', 'natural']);
const turns = oneOf(['any', 'half', 'none']);
const material = oneOf(['porcelain', 'ceramic', 'stone', 'cement', 'glass']);

const boxSchema = z
  .strictObject({
    pieces: leaf(some, 'Tiles in a box.'),
    price: leaf(price, 'Price of a box.').optional(),
    lot: leaf(text, 'Lot on the carton.').optional(),
    caliber: leaf(text, 'Caliber on the carton.').optional(),
    shade: leaf(text, 'Shade on the carton.').optional(),
    'on hand': leaf(count, 'Tiles of this lot that are already there.').optional(),
  })
  .meta({ description: 'How the tile is sold.' });

/** One tile, as measured. */
export const tileSchema = z
  .strictObject({
    name: leaf(text, 'What the tile is called on the sheets.').optional(),
    read: listOf(
      pair,
      'Length x width of several tiles, as measured with a caliper or a good tape.',
    ).optional(),
    ...tileShapes,
    run: leaf(
      tileRun,
      'Tiles laid out dry in a row with their joints, along their length, and what they read; chevron tiles one above another, rhombuses side by side.',
    ).optional(),
    thick: leaf(size, 'Thickness.').optional(),
    edge: leaf(edge, 'rectified, calibrated or natural.').optional(),
    bow: leaf(length, 'Bow along the longer side, as measured against a straightedge.').optional(),
    turns: leaf(turns, 'Whether a piece may be turned: any, half or none.').optional(),
    material: leaf(material, 'porcelain, ceramic, stone, cement or glass.').optional(),
    glazed: leaf(yesNo, 'Whether the face is glazed.').optional(),
    'wet friction': leaf(friction, 'DCOF when wet on the data sheet of the tile, such as 0.42.').optional(),
    box: boxSchema.optional(),
    'mock-up': z
      .strictObject({
        by: leaf(text, 'Who approved it.'),
        date: leaf(date, 'When it was approved.'),
      })
      .meta({ description: 'An approved mock-up of an offset or joint that the rules warn of.' })
      .optional(),
  })
  .meta({ description: 'One tile, as measured.' });

/** Tiles of a job by name. */
export const tilesSchema = z
  .record(z.string(), tileSchema)
  .meta({ description: 'The tiles of the job, each under a name of your own, such as field.' });

type GivenTile = z.output<typeof tileSchema>;

function nature(given: GivenTile, path: readonly string[], notes: Notes) {
  const kind = orDefault(notes, given.material, [...path, 'material'], 'porcelain', material);
  const glaze = kind === 'stone' || kind === 'cement' ? 'no' : 'yes';
  return {
    edge: orDefault(notes, given.edge, [...path, 'edge'], 'calibrated', edge),
    bow: orDefault(notes, given.bow, [...path, 'bow'], { inches: '0 in', mm: '0 mm' }, length),
    turns: orDefault(notes, given.turns, [...path, 'turns'], 'any', turns),
    material: kind,
    glazed: orDefault(notes, given.glazed, [...path, 'glazed'], glaze, yesNo),
  };
}

function boxOf({ 'on hand': _, ...box }: z.output<typeof boxSchema>): TileSpec['box'] {
  return box as TileSpec['box'];
}

/**
 * Mean length and width, and the largest spread of either. Where the two means lie within what the tape tells apart, or
 * within the spread itself, the tile is square: one mean of all readings, so that a square tile may be turned by a quarter.
 */
function meanSides(lengths: readonly Ticks[], widths: readonly Ticks[]) {
  const [length, width] = [mean(lengths), mean(widths)];
  const spreads = Math.max(spread(lengths), spread(widths));
  if (Math.abs(length - width) > Math.max(spreads, TICKS_PER_64TH)) return { length, width, spread: spreads };
  const all = [...lengths, ...widths];
  return { length: mean(all), width: mean(all), spread: spread(all) };
}

/** A row that was laid out and the tile as measured may differ by one joint at most: else one of them is not what was read. */
function checkRunOf(key: string, given: GivenTile, tile: Shaped, joint: Ticks, notes: Notes): void {
  if (!given.run) return;
  const { tiles, read } = given.run;
  const expected = dryRow(tile, joint, tiles);
  if (!(Math.abs(read - expected) > joint)) return;
  const say = (ticks: Ticks) => printLength(ticks, notes.system);
  const figures = {
    tiles,
    read: say(read),
    expected: say(expected),
    length: say(dryRow(tile, 0, 1)),
    joint: say(joint),
    fromRun: say((read - expected + dryRow(tile, 0, tiles)) / tiles),
  };
  trouble(notes, 'runDisagrees', ['tile', key, 'run'], figures);
}

/** A tile has its sides read, or is of one other shape; a sheet of mosaic is a rectangle, its sides less the joint they were read with. */
function sidesOf(
  { read, ...given }: GivenTile,
  joint: Ticks,
  path: readonly string[],
  notes: Notes,
): Shaped & Pick<TileSpec, 'chips' | 'chip'> {
  const shapes = Object.keys(tileShapes).filter((key) => given[key as 'round'] !== undefined);
  if (!read && shapes.length === 0) trouble(notes, 'missing', [...path, 'read'], { key: 'read' }, true);
  if (shapes.length > (read ? 0 : 1))
    trouble(notes, 'oneTileShape', path, { keys: [...(read ? ['read'] : []), ...shapes].join(', ') }, true);
  const { hexagon, octagon, rhombus, chevron, round } = given;
  const shaped = shapeOf({ hexagon, octagon, rhombus, chevron, round }, path, notes);
  if (shaped) return shaped;
  const readings = read ?? (given.mosaic ? sheetReadings(given.mosaic, joint) : [pair.standIn]);
  const sides = meanSides(
    readings.map(([first]) => first),
    readings.map(([, second]) => second),
  );
  return { readings, ...sides, ...(given.mosaic && chipsOf(given.mosaic, path, notes)) };
}

function buildTile(key: string, given: GivenTile, joint: Ticks, notes: Notes): TileSpec {
  const path = ['tile', key];
  if (given.box && given.box['on hand'] === undefined) noteDefault(notes, [...path, 'box', 'on hand'], '0');
  const sides = sidesOf(given, joint, path, notes);
  checkRunOf(key, given, sides, joint, notes);
  return {
    key,
    name: given.name ?? key,
    ...sides,
    ...(given.run ? { run: given.run } : {}),
    thickness: orDefault(notes, given.thick, [...path, 'thick'], { inches: '3/8 in', mm: '9 mm' }, size),
    ...nature(given, path, notes),
    ...(given.box ? { box: boxOf(given.box) } : {}),
    ...(given['wet friction'] === undefined ? {} : { friction: given['wet friction'] }),
    onHand: given.box?.['on hand'] ?? 0,
    ...(given['mock-up'] ? { mockUp: given['mock-up'] } : {}),
  };
}

/** The tiles of a job, in the order written, each held against the row that was laid out with this joint. */
export function buildTiles(
  given: z.output<typeof tilesSchema>,
  joint: Ticks,
  notes: Notes,
): readonly TileSpec[] {
  return Object.entries(given).map(([key, tile]) => buildTile(key, tile, joint, notes));
}
