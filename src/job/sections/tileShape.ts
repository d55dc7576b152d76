import * as z from 'zod';
import { mean, printLength, spread, TICKS_PER_64TH, type Ticks } from '../../measure/index.ts';
import type { TileShape, TileSpec } from '../Job.ts';
import { pointsPerFlat } from '../pointsPerFlat.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { size } from '../values/length.ts';
import { slant } from '../values/numbers.ts';
import { oneOf } from '../values/oneOf.ts';
import { pair } from '../values/pair.ts';
import { mosaicSchema } from './mosaic.ts';
import { type Notes, trouble } from './Notes.ts';

const hand = oneOf(['right', 'left']);

/** Keys of tiles that are no rectangles, each with its measures in its own words. */
export const tileShapes = {
  hexagon: z
    .strictObject({
      flats: listOf(size, 'From flat to opposite flat, one or several.').optional(),
      points: listOf(size, 'From point to opposite point, one or several.').optional(),
    })
    .meta({
      description: 'A regular hexagon by its flats, its points or both, which are held against each other.',
    })
    .optional(),
  octagon: z
    .strictObject({
      flats: listOf(size, 'From flat to opposite flat, one or several.'),
      corner: leaf(
        size,
        'What the cut corner takes of a side; that of a regular octagon unless told.',
      ).optional(),
    })
    .meta({ description: 'An octagon: a square with its corners cut.' })
    .optional(),
  rhombus: listOf(pair, 'Long x short diagonal of a rhombus.').optional(),
  chevron: z
    .strictObject({
      read: listOf(pair, 'Long side x width square to it.'),
      hand: leaf(hand, 'Its ends upright, its long sides rise to the right or to the left.'),
      angle: leaf(slant, 'Degrees between the end and the long side; 45 unless told.').optional(),
    })
    .meta({ description: 'A tile with slanting ends for chevron.' })
    .optional(),
  round: listOf(size, 'Diameter of a round tile, one or several.').optional(),
  mosaic: mosaicSchema.optional(),
};

const shapesSchema = z.strictObject(tileShapes);
type Shapes = z.output<typeof shapesSchema>;

/** What a shape makes of a tile. */
export type Shaped = Pick<TileSpec, 'shape' | 'readings' | 'length' | 'width' | 'spread'>;

/** The shape of a tile that is no rectangle; undefined for one that is. Several shapes at once are told by the caller. */
export function shapeOf(given: Shapes, path: Path, notes: Notes): Shaped | undefined {
  if (given.hexagon) return hexagon(given.hexagon, path, notes);
  if (given.octagon) {
    const flats = mean(given.octagon.flats);
    const corner = given.octagon.corner ?? Math.round(flats * (1 - Math.SQRT1_2));
    return shaped(
      { kind: 'octagon', corner },
      given.octagon.flats.map((one) => [one, one]),
    );
  }
  if (given.rhombus) return shaped({ kind: 'rhombus' }, given.rhombus);
  if (given.round)
    return shaped(
      { kind: 'round' },
      given.round.map((one) => [one, one]),
    );
  if (!given.chevron) return undefined;
  const angle = ((given.chevron.angle ?? 45) * Math.PI) / 180;
  const boxes = given.chevron.read.map(([long, wide]): readonly [Ticks, Ticks] => [
    Math.round(long * Math.sin(angle)),
    Math.round(long * Math.cos(angle) + wide / Math.sin(angle)),
  ]);
  const rise = mean(given.chevron.read.map(([long]) => Math.round(long * Math.cos(angle))));
  return shaped({ kind: 'chevron', rise, hand: given.chevron.hand }, boxes);
}

function shaped(shape: TileShape, readings: Shaped['readings']): Shaped {
  const [lengths, widths] = [readings.map(([one]) => one), readings.map(([, other]) => other)];
  return {
    shape,
    readings,
    length: mean(lengths),
    width: mean(widths),
    spread: Math.max(spread(lengths), spread(widths)),
  };
}

/** A hexagon whose flats and points are both read must have them 1 to 1.1547, to within what its readings and the tape tell. */
function hexagon({ flats, points }: NonNullable<Shapes['hexagon']>, path: Path, notes: Notes): Shaped {
  if (!flats && !points) trouble(notes, 'hexagonUnread', [...path, 'hexagon'], {}, true);
  const across = flats ?? (points ?? [Number.NaN]).map((one) => Math.round(one / pointsPerFlat));
  if (flats && points) {
    const [flat, point] = [mean(flats), mean(points)];
    const free = Math.max(spread(flats), spread(points), 4 * TICKS_PER_64TH);
    if (Math.abs(point - flat * pointsPerFlat) > free) {
      const say = (ticks: Ticks) => printLength(Math.round(ticks), notes.system);
      const figures = {
        flats: say(flat),
        points: say(point),
        expected: say(flat * pointsPerFlat),
        other: say(point / pointsPerFlat),
      };
      trouble(notes, 'hexagonRatio', [...path, 'hexagon'], figures);
    }
  }
  return shaped(
    { kind: 'hexagon' },
    across.map((one) => [one, Math.round(one * pointsPerFlat)]),
  );
}
