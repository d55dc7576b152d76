import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern } from './Pattern.ts';
import { tileRing } from './tileRing.ts';

/**
 * Straight lay: joints run through both ways. One tile a repeat, its lower left corner where the repeat
 * stands; a repeat is as large as the tile and one joint.
 *
 * @example straight({ key: 'field', length: 600, width: 300 }, 10).a //=> [610, 0]
 */
export function straight(tile: Pick<TileSpec, 'key' | 'length' | 'width'>, joint: Ticks): Pattern {
  const [along, across] = [tile.length + joint, tile.width + joint];
  return {
    name: 'straight',
    a: [along, 0],
    b: [0, across],
    tiles: [
      {
        tile: tile.key,
        ring: tileRing([0, 0], tile.length, tile.width),
        quarter: 0,
        column: [1, 0, 0],
        row: [0, 1, 0],
      },
    ],
    joint,
    module: [along, across],
    straightX: true,
    straightY: true,
    inCourses: true,
  };
}
