import type { Ticks } from '../measure/index.ts';
import type { TileSpec } from './Job.ts';
import { pointsPerFlat } from './pointsPerFlat.ts';

/**
 * Length and width of what lies flat on the floor: of the tile, or of one chip of a sheet of mosaic, in ticks.
 *
 * @example
 * chipSides({ length: 600, width: 300 }, 10) //=> { length: 600, width: 300 }
 * chipSides({ length: 190, width: 90, chips: [10, 5] }, 10) //=> { length: 10, width: 10 }
 * chipSides({ length: 190, width: 90, chips: [10, 5], chip: { kind: 'round', across: 12 } }, 10) //=> { length: 12, width: 12 }
 */
export function chipSides(
  { length, width, chips = [1, 1], chip }: Pick<TileSpec, 'length' | 'width' | 'chips' | 'chip'>,
  joint: Ticks,
): Pick<TileSpec, 'length' | 'width'> {
  if (chip)
    return {
      length: Math.round(chip.across * (chip.kind === 'hexagon' ? pointsPerFlat : 1)),
      width: chip.across,
    };
  const side = (whole: Ticks, count: number) => Math.round((whole + joint) / count) - joint;
  return { length: side(length, chips[0]), width: side(width, chips[1]) };
}
