import { type Point, type Ring, side } from '../geometry/index.ts';

/** Moves between which a sliding piece is too near another; undefined where it never is. */
export type Stops = readonly [from: number, to: number];

/**
 * Moves of a convex ring along a unit direction between which it is nearer to another than a distance.
 *
 * @example slideStops([[0, 0], [4, 0], [4, 4], [0, 4]], [1, 0], [[10, 0], [14, 0], [14, 4], [10, 4]], 2) //=> [4, 16]
 * @example slideStops([[0, 0], [4, 0], [4, 4], [0, 4]], [1, 0], [[10, 7], [14, 7], [14, 9], [10, 9]], 2) //=> undefined
 */
export function slideStops(ring: Ring, way: Point, other: Ring, least: number): Stops | undefined {
  if (passesBy(ring, way, other, least)) return undefined;
  // At either end a corner of one is exactly that far from a corner or a side of the other.
  const back: Point = [-way[0], -way[1]];
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const take = (move: number) => {
    from = Math.min(from, move);
    to = Math.max(to, move);
  };
  for (const corner of ring) {
    for (let i = 0; i < other.length; i++) {
      toCorner(corner, way, other[i]!, least, take);
      toSide(corner, way, other, i, least, take);
    }
  }
  for (const corner of other)
    for (let i = 0; i < ring.length; i++) toSide(corner, back, ring, i, least, take);
  return from > to ? undefined : [from, to];
}

/** Whether the lane of a sliding ring runs clear of another: most do, and nothing more need be asked. */
function passesBy(ring: Ring, [wx, wy]: Point, other: Ring, least: number): boolean {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [x, y] of ring) {
    const off = y * wx - x * wy;
    if (off < low) low = off;
    if (off > high) high = off;
  }
  let [above, below] = [true, true];
  for (const [x, y] of other) {
    const off = y * wx - x * wy;
    if (off <= high + least) above = false;
    if (off >= low - least) below = false;
  }
  return above || below;
}

type Take = (move: number) => void;

function toCorner([x, y]: Point, [wx, wy]: Point, [px, py]: Point, least: number, take: Take): void {
  const along = (px - x) * wx + (py - y) * wy;
  const off = side([x, y], [x + wx, y + wy], [px, py]);
  if (Math.abs(off) > least) return;
  const half = Math.sqrt((least + off) * (least - off));
  take(along - half);
  take(along + half);
}

function toSide(corner: Point, way: Point, ring: Ring, i: number, least: number, take: Take): void {
  const [from, to] = [ring[i]!, ring[(i + 1) % ring.length]!];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(dx * dx + dy * dy);
  const speed = -side([0, 0], [dx, dy], way) / length;
  if (Math.abs(speed) < 1e-9) return;
  const move = (least + side(from, to, corner) / length) / speed;
  const [x, y] = [corner[0] + move * way[0] - from[0], corner[1] + move * way[1] - from[1]];
  const foot = (x * dx + y * dy) / length;
  if (foot >= 0 && foot <= length) take(move);
}
