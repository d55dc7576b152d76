import * as z from 'zod';
import { printLength } from '../../measure/index.ts';
import type { BaseSpec, FromWall, HeightSpec, Layer, TileSpec, WallSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import { fromKeys, withFrom } from '../shape/withFrom.ts';
import { flatness } from '../values/flatness.ts';
import { type HeightAbove, heightAbove } from '../values/heightAbove.ts';
import { length, size } from '../values/length.ts';
import { oneOf } from '../values/oneOf.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { wallName } from './names.ts';

const layers = (description: string) =>
  z.record(z.string(), leaf(length, 'Thickness of the layer.')).meta({ description }).optional();

const movement = oneOf(['still', 'moving']);

const heightForm = z
  .strictObject({
    height: leaf(length, 'Height as measured now.'),
    above: leaf(text, 'The layer it was measured from, or base.'),
    wanted: leaf(length, 'Height that is wanted over the finished tile.').optional(),
    needs: leaf(length, 'Height that an appliance needs over the finished tile.').optional(),
  })
  .transform(({ height, above, wanted, needs }): HeightAbove => {
    const least = wanted ?? needs;
    return least === undefined ? { height, above } : { height, above, wanted: least };
  });

const heightSchema = z.union([
  leaf(heightAbove, 'Height as measured now, and above what: 1/4 in above vinyl.'),
  heightForm,
]);

/** The base under the tile, its layers and what was measured of it. */
export const baseSchema = z
  .strictObject({
    below: leaf(text, 'The bare base that all heights count from: boards, plywood, concrete …').optional(),
    removed: layers('Layers that come off, from the base up: `sheet vinyl: 1/8 in`.'),
    kept: layers('Layers that stay, from the base up.'),
    new: layers('Layers that come on, from the base up, the tile last.'),
    heights: z
      .record(z.string(), heightSchema)
      .meta({ description: 'Flange, doors, meeting floors, appliances: as measured now, and above what.' })
      .optional(),
    flatness: listOf(flatness, 'Gaps under a straightedge: 3/16 in under 10 ft at the hall door.').optional(),
    cracks: z
      .record(z.string(), leaf(movement, 'still or moving.'))
      .meta({ description: 'Cracks by where they are: `by the hearth: still`.' })
      .optional(),
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

function layersOf(given: Readonly<Record<string, number>> | undefined): readonly Layer[] {
  return Object.entries(given ?? {}).map(([name, thickness]) => ({ name, thickness }));
}

function freshLayers(given: Given | undefined, tile: TileSpec | undefined, notes: Notes): readonly Layer[] {
  if (given?.new) return layersOf(given.new);
  const mortar = notes.system === 'inches' ? '1/8 in' : '3 mm';
  const thickness = tile?.thickness ?? 0;
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

const KINDS: readonly (readonly [RegExp, HeightSpec['kind']])[] = [
  [/\bflange\b/i, 'flange'],
  [/\bdoor\b/i, 'door'],
  [/\b(?:floor|threshold|carpet)\b/i, 'floor'],
  [
    /\b(?:dishwasher|washer|dryer|fridge|refrigerator|freezer|range|stove|oven|cooker|machine|appliance)\b/i,
    'appliance',
  ],
];

function kindOf(name: string): HeightSpec['kind'] {
  return KINDS.find(([pattern]) => pattern.test(name))?.[1] ?? 'other';
}

/** `vinyl` finds the layer `sheet vinyl`; `base` finds the bare base. */
function layerName(name: string, names: readonly string[], below: string): string | undefined {
  const given = name.toLowerCase();
  if (given === 'base') return below;
  return (
    names.find((layer) => layer.toLowerCase() === given) ??
    names.find((layer) => ` ${layer.toLowerCase()} `.includes(` ${given} `))
  );
}

function buildHeights(
  given: Given | undefined,
  names: readonly string[],
  below: string,
  notes: Notes,
): readonly HeightSpec[] {
  return Object.entries(given?.heights ?? {}).map(([name, at]) => {
    const above = layerName(at.above, names, below);
    if (above === undefined && at.above !== '')
      trouble(notes, 'unknownLayer', ['base', 'heights', name], { name: at.above, layers: names.join(', ') });
    return { name, kind: kindOf(name), ...at, above: above ?? at.above };
  });
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
  walls: readonly WallSpec[],
  notes: Notes,
): BaseSpec {
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
    heights: buildHeights(given, names, below, notes),
    flatness: given?.flatness ?? [],
    cracks: Object.entries(given?.cracks ?? {}).map(([where, how]) => ({ where, moving: how === 'moving' })),
    joints: buildJoints(given, walls, notes),
    heated: orDefault(notes, given?.heated, ['base', 'heated'], 'no', yesNo),
    comesOut: Object.entries(given?.['comes out'] ?? {}).map(([what, who]) =>
      who === '' ? { what } : { what, who },
    ),
  };
}
