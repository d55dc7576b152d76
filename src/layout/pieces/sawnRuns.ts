import { type Point, type Ring, side } from '../../geometry/index.ts';

/** A stretch of a ring's edge, point by point. */
export type Run = readonly Point[];

/**
 * The stretches of a piece's outer ring that are not the tile's own edge, in order: what the saw makes. Where
 * all of it is sawn, the ring comes back as one stretch that ends where it began.
 *
 * @example sawnRuns([[0, 0], [9, 0], [9, 4], [0, 4]], [[0, 0], [9, 0], [9, 9], [0, 9]]) //=> [[[9, 4], [0, 4]]]
 * @example sawnRuns([[0, 0], [9, 0], [9, 9], [0, 9]], [[0, 0], [9, 0], [9, 9], [0, 9]]) //=> []
 */
export function sawnRuns(outer: Ring, tile: Ring): Run[] {
  const n = outer.length;
  const sawn = outer.map((point, i) => !onOneSide(tile, point, outer[(i + 1) % n]!));
  const start = sawn.findIndex((is, i) => is && !sawn[(i + n - 1) % n]!);
  if (start < 0) return sawn[0] ? [[...outer, outer[0]!]] : [];
  const runs: Point[][] = [];
  for (let step = 0; step < n; step++) {
    const at = (start + step) % n;
    if (!sawn[at]) continue;
    if (!sawn[(at + n - 1) % n]) runs.push([outer[at]!]);
    runs.at(-1)!.push(outer[(at + 1) % n]!);
  }
  return runs;
}

/** Whether two points lie on one side of a tile. */
export function onOneSide(tile: Ring, a: Point, b: Point): boolean {
  let p = tile[tile.length - 1]!;
  for (const q of tile) {
    if (side(p, q, a) === 0 && side(p, q, b) === 0) return true;
    p = q;
  }
  return false;
}
