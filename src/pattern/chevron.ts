import { bounds, type Point, translate } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern, PatternTile } from './Pattern.ts';
import { tileOutline } from './tileOutline.ts';

type Slanted = Pick<TileSpec, 'key' | 'length' | 'width' | 'shape'>;

/**
 * Chevron: columns of slanting tiles with upright ends, rising to the right and to the left by turns, tip to tip; tiles of
 * both hands, of one size. The tile's length and width are the box round it.
 *
 * @example chevron({ key: 'one', length: 600, width: 900, shape: { kind: 'chevron', rise: 600, hand: 'right' } }, { key: 'other', length: 600, width: 900, shape: { kind: 'chevron', rise: 600, hand: 'left' } }, 10).a //=> [1220, 0]
 */
export function chevron(one: Slanted, other: Slanted, joint: Ticks): Pattern {
  const rise = one.shape?.kind === 'chevron' ? one.shape.rise : 0;
  const long = Math.max(one.length, other.length);
  const end = Math.max(one.width, other.width) - rise;
  // The joint is measured square to the long sides, which slant.
  const pitch = end + Math.round(joint * Math.hypot(1, rise / long));
  const column = long + joint;
  const tile = (of: Slanted, at: number): PatternTile => {
    const ring = tileOutline(of);
    const by: Point = [at * column - bounds(ring).minX, 0];
    return {
      tile: of.key,
      ring: ring.map((point) => translate(point, by)),
      quarter: 0,
      column: [2, 0, at],
      row: [0, 1, 0],
    };
  };
  return {
    name: 'chevron',
    a: [2 * column, 0],
    b: [0, pitch],
    tiles: [tile(one, 0), tile(other, 1)],
    joint,
    module: [column, pitch],
    step: [column, pitch],
    straightX: true,
    straightY: false,
    inCourses: false,
  };
}
