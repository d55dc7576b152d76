import type { Point, Ring } from '../geometry/index.ts';

/** Corners whose distances from a line differ by no more than this, in ticks, stand on a side that runs along it. */
const ALIKE = 160;
/** Sides of a tile that differ by less than this share are not told apart by length. */
const SQUARE = 0.02;

/**
 * What of a tile comes nearest to a line: a side that runs along it, the long or the short one where it has such, or a corner.
 *
 * @example nearestOf([[10, 500], [10010, 500], [10010, 2500], [10, 2500]], [[0, 0], [1, 0]]) //=> 'long'
 * @example nearestOf([[10, 500], [10010, 500], [10010, 2500], [10, 2500]], [[0, 0], [0, 1]]) //=> 'short'
 * @example nearestOf([[0, 0], [5000, 5000], [0, 10000], [-5000, 5000]], [[0, -9], [1, -9]]) //=> 'corner'
 */
export function nearestOf(ring: Ring, [from, to]: readonly [Point, Point]) {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const off = ([x, y]: Point) =>
    Math.abs((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])) / long;
  const sides = ring.map((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return { ends: [off(a), off(b)], length: Math.hypot(b[0] - a[0], b[1] - a[1]) };
  });
  const least = Math.min(...ring.map(off));
  const along = sides.find(({ ends }) => ends.every((one) => one - least <= ALIKE));
  if (!along) return 'corner';
  const lengths = sides.map(({ length }) => length);
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)];
  if (longest - shortest <= SQUARE * longest) return 'side';
  if (along.length >= (1 - SQUARE) * longest) return 'long';
  return along.length <= (1 + SQUARE) * shortest ? 'short' : 'side';
}
