import type { Point } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern, PatternTile } from './Pattern.ts';

type Slanted = Pick<TileSpec, 'key' | 'length' | 'width' | 'shape'>;

/**
 * Chevron: columns of slanting tiles with upright ends, rising and falling by turns, tip to tip. The tile's
 * length and width are the box round it; those that rise and those that fall are different tiles.
 *
 * @example chevron({ key: 'left', length: 600, width: 900, shape: { kind: 'chevron', rise: 600 } }, { key: 'right', length: 600, width: 900, shape: { kind: 'chevron', rise: 600 } }, 10).a //=> [1220, 0]
 */
export function chevron(rising: Slanted, falling: Slanted, joint: Ticks): Pattern {
  const [long, rise, end] = [0, 1, 2].map((at) => Math.max(sizes(rising)[at]!, sizes(falling)[at]!)) as [
    Ticks,
    Ticks,
    Ticks,
  ];
  // The joint is measured square to the long sides, which slant.
  const pitch = end + Math.round(joint * Math.hypot(1, rise / long));
  const column = long + joint;
  const tile = (key: string, ring: readonly Point[], at: number): PatternTile => {
    return { tile: key, ring, quarter: 0, column: [2, 0, at], row: [0, 1, 0] };
  };
  return {
    name: 'chevron',
    a: [2 * column, 0],
    b: [0, pitch],
    tiles: [
      tile(rising.key, slanted([0, 0], long, rise, end), 0),
      tile(falling.key, slanted([column, rise], long, -rise, end), 1),
    ],
    joint,
    module: [column, pitch],
    step: [column, pitch],
    straightX: true,
    straightY: false,
    inCourses: false,
  };
}

/** Length along x, rise, and the upright end. */
function sizes({ length, width, shape }: Slanted): readonly Ticks[] {
  const rise = shape?.kind === 'chevron' ? shape.rise : 0;
  return [length, rise, width - rise];
}

function slanted([x, y]: Point, long: Ticks, rise: Ticks, end: Ticks): readonly Point[] {
  return [
    [x, y],
    [x + long, y + rise],
    [x + long, y + rise + end],
    [x, y + end],
  ];
}
