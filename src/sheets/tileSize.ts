import type { TileSpec } from '../job/Job.ts';
import { tileMeasures } from '../job/tileMeasures.ts';
import type { SheetContext } from './SheetContext.ts';

/** A tile's size in the measures of its shape: length and width, flats and points, sides and angle. */
export function tileSize({ say, length, number }: SheetContext, tile: TileSpec): string {
  const { shape, long, wide, angle } = tileMeasures(tile);
  return say('size.tile', {
    shape,
    long: length(long),
    wide: length(wide),
    angle: angle === '' ? '' : number(Number(angle)),
  });
}
