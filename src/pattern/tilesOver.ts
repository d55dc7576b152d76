import { bounds, type Point, type Ring, translate } from '../geometry/index.ts';
import type { Pattern } from './Pattern.ts';

/**
 * The tiles of a pattern, repeat (0, 0) at the origin, whose boxes meet the box of a ring.
 *
 * @example tilesOver({ a: [10, 0], b: [0, 10], tiles: [{ tile: 'field', ring: [[0, 0], [9, 0], [9, 9], [0, 9]] }] }, [[1, 1], [12, 1], [12, 8]]).length //=> 2
 */
export function tilesOver(
  {
    a,
    b,
    tiles,
  }: { readonly [Key in 'a' | 'b']: Pattern[Key] } & {
    readonly tiles: readonly Pick<Pattern['tiles'][number], 'tile' | 'ring'>[];
  },
  over: Ring,
): readonly { readonly tile: string; readonly ring: Ring }[] {
  const view = bounds(over);
  const own = bounds(tiles.flatMap(({ ring }) => ring));
  const area = a[0] * b[1] - a[1] * b[0];
  // A repeat may meet the view where a corner of the view, less a corner of the repeat's tiles, lies in it.
  const corners = [view.minX - own.maxX, view.maxX - own.minX].flatMap((x) =>
    [view.minY - own.maxY, view.maxY - own.minY].map(
      (y): Point => [(x * b[1] - y * b[0]) / area, (y * a[0] - x * a[1]) / area],
    ),
  );
  const reach = bounds(corners);
  const found: { tile: string; ring: Ring }[] = [];
  for (let j = Math.floor(reach.minY); j <= Math.ceil(reach.maxY); j++) {
    for (let i = Math.floor(reach.minX); i <= Math.ceil(reach.maxX); i++) {
      const by: Point = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      found.push(
        ...tiles.map(({ tile, ring }) => ({ tile, ring: ring.map((point) => translate(point, by)) })),
      );
    }
  }
  return found.filter(({ ring }) => {
    const box = bounds(ring);
    return box.minX < view.maxX && box.maxX > view.minX && box.minY < view.maxY && box.maxY > view.minY;
  });
}
