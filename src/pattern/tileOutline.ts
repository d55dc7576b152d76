import { bounds, circleRing, type Point, type Ring, translate } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';

/** What a tile's outline depends on. */
export type Outlined = Pick<TileSpec, 'length' | 'width' | 'shape'>;

/** How far chords may lie off a round tile, in ticks: 1/128 in. */
const CHORD = 64;

/**
 * A whole tile in its own axes, counter-clockwise, its box at the origin; ticks.
 *
 * @example tileOutline({ length: 600, width: 300 }) //=> [[0, 0], [600, 0], [600, 300], [0, 300]]
 * @example tileOutline({ length: 80, width: 60, shape: { kind: 'rhombus' } }) //=> [[40, 0], [80, 30], [40, 60], [0, 30]]
 */
export function tileOutline({ length, width, shape }: Outlined): Ring {
  switch (shape?.kind) {
    case 'hexagon':
      return hexagonRing(length, width);
    case 'octagon':
      return octagonRing(length, shape.corner);
    case 'rhombus':
      return rhombusRing(length, width);
    case 'chevron':
      return slantedRing(length, width, shape.hand === 'right' ? shape.rise : -shape.rise);
    case 'round':
      return atOrigin(circleRing([0, 0], length / 2, CHORD));
    default:
      return [[0, 0], [length, 0], [length, width], [0, width]]; // biome-ignore format: a tile on a line
  }
}

function hexagonRing(flats: Ticks, points: Ticks): readonly Point[] {
  const [half, low, high] = [flats / 2, points / 4, (points * 3) / 4].map(Math.round) as [
    Ticks,
    Ticks,
    Ticks,
  ];
  return [[half, 0], [flats, low], [flats, high], [half, points], [0, high], [0, low]]; // biome-ignore format: a ring on a line
}

function octagonRing(flats: Ticks, corner: Ticks): readonly Point[] {
  const rest = flats - corner;
  const lower: Point[] = [[corner, 0], [rest, 0], [flats, corner], [flats, rest]]; // biome-ignore format: half a ring on a line
  return [...lower, [rest, flats], [corner, flats], [0, rest], [0, corner]];
}

function rhombusRing(length: Ticks, width: Ticks): readonly Point[] {
  const [half, side] = [Math.round(length / 2), Math.round(width / 2)];
  return [[half, 0], [length, side], [half, width], [0, side]]; // biome-ignore format: a ring on a line
}

function slantedRing(length: Ticks, width: Ticks, rise: Ticks): readonly Point[] {
  const end = width - Math.abs(rise);
  const [left, right] = [Math.max(0, -rise), Math.max(0, rise)];
  return [[0, left], [length, right], [length, right + end], [0, left + end]]; // biome-ignore format: a ring on a line
}

function atOrigin(ring: Ring): Ring {
  const { minX, minY } = bounds(ring);
  return ring.map((point) => translate(point, [-minX, -minY]));
}
