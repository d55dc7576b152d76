import * as z from 'zod';
import { printLength } from '../../measure/index.ts';
import type { BaseSpec, FromWall, Layer, SurfaceSpec, TileSpec, WallSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import { fromKeys, withFrom } from '../shape/withFrom.ts';
import { date } from '../values/calendarValues.ts';
import { flatness } from '../values/flatness.ts';
import { length, size } from '../values/length.ts';
import { moistureReading } from '../values/moistureReading.ts';
import { oneOf } from '../values/oneOf.ts';
import { areaRange, time, volume } from '../values/quantities.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { buildCracks, buildGrid, buildHollow, cracksSchema, gridSchema, hollowSchema } from './basePlaces.ts';
import { buildHeights, heightsSchema, layerName } from './heights.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { wallName } from './names.ts';

const layers = (description: string) =>
  z.record(z.string(), leaf(length, 'Thickness of the layer.')).meta({ description }).optional();

const newLayer = z.union([
  leaf(length, 'Thickness of the layer.').transform((thick): GivenLayer => ({ thick })),
  z
    .strictObject({
      thick: leaf(length, 'Thickness of the layer.'),
      pack: leaf(areaRange, 'What a pack or roll covers, by its own sheet.').optional(),
      wait: leaf(time, 'How long it is left alone before the next step, by its own sheet.').optional(),
    })
    .meta({ description: 'A layer with the figures of its own sheet.' }),
]);

/** A layer as the job file has it. */
interface GivenLayer {
  readonly thick: number;
  readonly pack?: readonly [number, number] | undefined;
  readonly wait?: number | undefined;
}

const films = oneOf(['none', 'paint', 'curing']);
const drops = oneOf(['soaks in', 'stays']);
const film = leaf(films, 'none, paint or curing.');

const filmSchema = z
  .union([
    film.transform((kind): NonNullable<BaseSpec['film']> => ({ kind })),
    z
      .strictObject({
        kind: film,
        'drop test': leaf(drops, 'What a drop of water does: soaks in or stays.').optional(),
      })
      .transform(
        ({ kind, 'drop test': drop }): NonNullable<BaseSpec['film']> =>
          drop === undefined ? { kind } : { kind, drop },
      ),
  ])
  .meta({ description: 'Paint or curing film on the base: none, paint or curing.' });

const moistureSchema = z
  .strictObject({
    reads: leaf(moistureReading, 'As the test tells it: 4 lb, 78 % RH, 2.1 % CM or 9 % MC.'),
    on: leaf(date, 'Day of the test.').optional(),
    limit: leaf(moistureReading, "Most that the mortar's sheet allows, by the same test.").optional(),
  })
  .meta({ description: 'Moisture of the base.' });

/** The base under the tile, its layers and what was measured of it. */
export const baseSchema = z
  .strictObject({
    below: leaf(text, 'The bare base that all heights count from: boards, plywood, concrete …').optional(),
    removed: layers('Layers that come off, from the base up: `sheet vinyl: 1/8 in`.'),
    kept: layers('Layers that stay, from the base up.'),
    new: z
      .record(z.string(), newLayer)
      .meta({ description: 'Layers that come on, from the base up, the tile last.' })
      .optional(),
    heights: heightsSchema.optional(),
    'read on': leaf(
      text,
      'What flatness, film and moisture were read on: a layer that comes up, or base.',
    ).optional(),
    flatness: listOf(flatness, 'Gaps under a straightedge: 3/16 in under 10 ft at the hall door.').optional(),
    'flatness grid': gridSchema.optional(),
    'fill bag': leaf(volume, 'What a bag of patch or leveler fills.').optional(),
    'fill wait': leaf(
      time,
      'How long patch or leveler is left alone before the next step, by its own sheet.',
    ).optional(),
    'laboratory wait': leaf(time, 'From the sample to the answer of the laboratory.').optional(),
    cracks: cracksSchema.optional(),
    hollow: hollowSchema.optional(),
    'nail holes': leaf(text, 'Where nails or tack strip left holes.').optional(),
    film: filmSchema.optional(),
    moisture: moistureSchema.optional(),
    joints: withFrom(
      {},
      listOf(size, 'Distances from this wall.'),
      'Joints of the base: `from A-B: 10 ft`.',
    ).optional(),
    heated: leaf(yesNo, 'Whether the floor is heated.').optional(),
    'comes out': z
      .union([
        listOf(text, 'What must come out and go back.').transform((all) =>
          Object.fromEntries(all.map((what) => [what, ''])),
        ),
        z.record(z.string(), leaf(text, 'Who does it.')),
      ])
      .meta({
        description: 'What must come out and go back: [toilet, doors] or {toilet: plumber, doors: setter}.',
      })
      .optional(),
  })
  .meta({ description: 'The base under the tile, its layers and heights.' });

type Given = z.output<typeof baseSchema>;

/** Of a range that a pack covers the smaller figure counts. */
function newLayerOf(name: string, { thick, pack, wait }: GivenLayer): Layer {
  return {
    name,
    thickness: thick,
    ...(pack ? { packM2: pack[0] } : {}),
    ...(wait === undefined ? {} : { waitHours: wait }),
  };
}

function layersOf(given: Readonly<Record<string, number>> | undefined): readonly Layer[] {
  return Object.entries(given ?? {}).map(([name, thickness]) => ({ name, thickness }));
}

function freshLayers(given: Given | undefined, tile: TileSpec | undefined, notes: Notes): readonly Layer[] {
  if (given?.new) return Object.entries(given.new).map(([name, one]) => newLayerOf(name, one));
  const mortar = notes.system === 'inches' ? '1/8 in' : '3 mm';
  // One that could not be read is told already, and cannot be written.
  const thickness = tile && Number.isFinite(tile.thickness) ? tile.thickness : 0;
  const bed = length.read(mortar);
  noteDefault(
    notes,
    ['base', 'new'],
    `{mortar under tile: ${mortar}, tile: ${printLength(thickness, notes.system)}}`,
  );
  return [
    { name: 'mortar under tile', thickness: bed.ok ? bed.value : 0 },
    { name: 'tile', thickness },
  ];
}

function buildJoints(
  given: Given | undefined,
  walls: readonly WallSpec[],
  notes: Notes,
): readonly FromWall[] {
  return fromKeys<readonly number[]>(given?.joints ?? {}).flatMap(({ key, name, value }) => {
    const wall = wallName(name, walls, ['base', 'joints', key], notes, true);
    return value.map((distance) => ({ wall, distance }));
  });
}

/** The base with its defaults. Heights name layers; joints name walls. */
export function buildBase(
  given: Given | undefined,
  tiles: readonly TileSpec[],
  surfaces: readonly SurfaceSpec[],
  notes: Notes,
): BaseSpec {
  const walls = surfaces.flatMap((surface) => surface.walls);
  const below = orDefault(notes, given?.below, ['base', 'below'], 'unknown', text);
  const removed = layersOf(given?.removed);
  const kept = layersOf(given?.kept);
  const fresh = freshLayers(given, tiles[0], notes);
  const names = [...[...removed, ...kept, ...fresh].map(({ name }) => name), below];
  return {
    below,
    removed,
    kept,
    fresh,
    heights: buildHeights(given?.heights, names, given?.below, notes),
    ...readOnOf(given, removed, names, notes),
    flatness: given?.flatness ?? [],
    cracks: buildCracks(given?.cracks, surfaces, notes),
    joints: buildJoints(given, walls, notes),
    heated: orDefault(notes, given?.heated, ['base', 'heated'], 'no', yesNo),
    comesOut: Object.entries(given?.['comes out'] ?? {}).map(([what, who]) =>
      who === '' ? { what } : { what, who },
    ),
    ...buildFound(given, surfaces, notes),
  };
}

/** Until the job tells otherwise, a base was read on the floor that comes up: that lies there when a house is first seen. */
function readOnOf(
  given: Given | undefined,
  removed: readonly Layer[],
  names: readonly string[],
  notes: Notes,
): Pick<BaseSpec, 'readOn'> {
  const written = given?.['read on'];
  if (written !== undefined) {
    const readOn = layerName(written, names, given?.below ?? 'unknown');
    if (readOn === undefined && written !== '')
      trouble(notes, 'unknownLayer', ['base', 'read on'], { name: written, layers: names.join(', ') });
    return { readOn: readOn ?? written };
  }
  const top = removed.at(-1);
  const isRead = READ.some((key) => given?.[key] !== undefined);
  if (!top || !isRead) return {};
  noteDefault(notes, ['base', 'read on'], top.name);
  return { readOn: top.name };
}

/** What is read on a base. */
const READ = ['flatness', 'flatness grid', 'film', 'moisture'] as const;

/** What was found on the base: only what the job tells. */
function buildFound(
  given: Given | undefined,
  surfaces: readonly SurfaceSpec[],
  notes: Notes,
): Partial<BaseSpec> {
  const grid = given?.['flatness grid'] && buildGrid(given['flatness grid'], surfaces, notes);
  const moisture = given?.moisture && buildMoisture(given.moisture, notes);
  return {
    ...(given?.hollow ? { hollow: buildHollow(given.hollow, surfaces, notes) } : {}),
    ...(given?.['nail holes'] === undefined ? {} : { nailHoles: given['nail holes'] }),
    ...(given?.film ? { film: given.film } : {}),
    ...(moisture ? { moisture } : {}),
    ...(grid ? { grid } : {}),
    ...(given?.['fill bag'] === undefined ? {} : { fillBagLitres: given['fill bag'] }),
    ...(given?.['fill wait'] === undefined ? {} : { fillWaitHours: given['fill wait'] }),
    ...(given?.['laboratory wait'] === undefined ? {} : { laboratoryHours: given['laboratory wait'] }),
  };
}

/** A reading can be held only against a limit of the same test. */
function buildMoisture(
  { reads, on, limit }: NonNullable<Given['moisture']>,
  notes: Notes,
): NonNullable<BaseSpec['moisture']> {
  if (limit && limit.unit !== reads.unit && !Number.isNaN(limit.value) && !Number.isNaN(reads.value))
    trouble(notes, 'otherMoisture', ['base', 'moisture', 'limit'], { unit: limit.unit, reads: reads.unit });
  return { reads, ...(on === undefined ? {} : { on }), ...(limit ? { limit } : {}) };
}
