import type { Ring } from '../geometry/index.ts';
import { areaM2Of } from '../measure/index.ts';
import type { Pattern } from './Pattern.ts';

/** What one kind of tile is of a pattern. */
export interface PatternShare {
  readonly tile: string;
  /** Tiles of it on a square metre of floor. */
  readonly perM2: number;
  /** Its part of all tiles, and of the floor, joints shared out by half; 0 to 1. */
  readonly ofTiles: number;
  readonly ofFloor: number;
}

/**
 * How much of a pattern each of its tiles is, by count and by area, in the order in which they stand in the repeat.
 *
 * @example patternShares({ a: [10, 0], b: [0, 10], joint: 1, tiles: [{ tile: 'field', ring: [[0, 0], [9, 0], [9, 9], [0, 9]] }] }).map(({ tile, ofFloor }) => [tile, ofFloor]) //=> [['field', 1]]
 */
export function patternShares({
  a,
  b,
  joint,
  tiles,
}: Pick<Pattern, 'a' | 'b' | 'joint'> & {
  readonly tiles: readonly Pick<Pattern['tiles'][number], 'tile' | 'ring'>[];
}): readonly PatternShare[] {
  const repeatM2 = areaM2Of(Math.abs(a[0] * b[1] - a[1] * b[0]));
  const floor = tiles.reduce((sum, { ring }) => sum + withJoint(ring, joint), 0);
  return [...new Set(tiles.map(({ tile }) => tile))].map((tile) => {
    const own = tiles.filter((one) => one.tile === tile);
    return {
      tile,
      perM2: own.length / repeatM2,
      ofTiles: own.length / tiles.length,
      ofFloor: own.reduce((sum, { ring }) => sum + withJoint(ring, joint), 0) / floor,
    };
  });
}

/** Area of a tile with half a joint all round, its sides drawn on until they meet: convex rings only. */
function withJoint(ring: Ring, joint: number): number {
  const half = joint / 2;
  return ring.reduce((area, p, i) => {
    const [q, r] = [ring[(i + 1) % ring.length]!, ring[(i + 2) % ring.length]!];
    const [ux, uy, vx, vy] = [q[0] - p[0], q[1] - p[1], r[0] - q[0], r[1] - q[1]];
    const bend = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
    return (
      area + (p[0] * q[1] - q[0] * p[1]) / 2 + half * Math.hypot(ux, uy) + half ** 2 * Math.tan(bend / 2)
    );
  }, 0);
}
