import type { Ticks } from '../measure/index.ts';
import type { TileSpec } from './Job.ts';

type Shaped = Pick<TileSpec, 'shape' | 'length' | 'width'>;

/** What a tile is and measures, as it is sold: the shape's name, two sizes in ticks, and of a chevron its angle in degrees. */
export interface TileMeasures {
  readonly shape: 'rectangle' | NonNullable<TileSpec['shape']>['kind'];
  readonly long: Ticks;
  readonly wide: Ticks;
  readonly angle: string;
}

/**
 * The measures by which a tile is bought and known again: a chevron's own long side and width, not those of the box round it.
 *
 * @example
 * tileMeasures({ length: 300, width: 600, shape: { kind: 'chevron', rise: 400, hand: 'left' } }).wide //=> 120
 * tileMeasures({ length: 600, width: 300 }).shape //=> 'rectangle'
 */
export function tileMeasures({ shape, length, width }: Shaped): TileMeasures {
  if (shape?.kind !== 'chevron')
    return { shape: shape?.kind ?? 'rectangle', long: length, wide: width, angle: '' };
  const long = Math.hypot(length, shape.rise);
  return {
    shape: shape.kind,
    long: Math.round(long),
    wide: Math.round(((width - shape.rise) * length) / long),
    angle: String(Math.round((Math.atan2(length, shape.rise) * 1800) / Math.PI) / 10),
  };
}
