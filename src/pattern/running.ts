import type { PatternSpec, TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern, PatternTile } from './Pattern.ts';
import { straight } from './straight.ts';
import { tileRing } from './tileRing.ts';

type Tile = Pick<TileSpec, 'key' | 'length' | 'width'>;

const HALF = { numerator: 1, denominator: 2 } as const;

/**
 * Running bond: each course shifted along its length against the one below, half a module unless the job
 * says otherwise. Stepping courses shift the same way each time, alternating ones go back and forth. A
 * fraction p/q gives q courses to the repeat, each shift rounded to ticks once; a length that steps is the
 * second repeat vector itself.
 *
 * @example running({ key: 'field', length: 599, width: 300 }, 10, { offset: { numerator: 1, denominator: 3 } }).tiles.map((one) => one.ring[0]) //=> [[0, 0], [203, 310], [406, 620]]
 * @example running({ key: 'field', length: 600, width: 300 }, 10, { offset: { length: 200 } }).b //=> [200, 310]
 */
export function running(
  tile: Tile,
  joint: Ticks,
  { offset = HALF, stepping = 'stepping' }: Pick<PatternSpec, 'offset' | 'stepping'>,
): Pattern {
  const [along, across] = [tile.length + joint, tile.width + joint];
  const base = { ...straight(tile, joint), name: 'running' };
  const shifts = courseShifts(along, offset, stepping);
  if (typeof shifts === 'number') {
    if (shifts === 0) return base;
    const first = { ...base.tiles[0]!, column: [1, shifts / along, 0] as const };
    return { ...base, b: [shifts, across], tiles: [first], straightX: false };
  }
  return {
    ...base,
    b: [0, across * shifts.length],
    tiles: shifts.map((shift, course): PatternTile => {
      return {
        tile: tile.key,
        ring: tileRing([shift, across * course], tile.length, tile.width),
        quarter: 0,
        column: [1, 0, 0],
        row: [0, shifts.length, course],
      };
    }),
    straightX: shifts.every((shift) => shift === 0),
  };
}

/** The shift of each course of one repeat; one number where every course shifts by that much more. */
function courseShifts(
  along: Ticks,
  offset: NonNullable<PatternSpec['offset']>,
  stepping: NonNullable<PatternSpec['stepping']>,
): readonly Ticks[] | Ticks {
  if ('length' in offset) {
    const shift = wrap(offset.length, along);
    return stepping === 'stepping' ? shift : [0, shift];
  }
  const { numerator, denominator } = offset;
  const part = (course: number) => Math.round((along * wrap(course * numerator, denominator)) / denominator);
  return Array.from({ length: stepping === 'stepping' ? denominator : 2 }, (_, course) => part(course));
}

function wrap(value: number, by: number): number {
  return ((value % by) + by) % by;
}
