import { distancePoints, type Ring, side } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/**
 * Whether straight cuts right across what is left of the tile part convex pieces from one another: each saw line runs along an
 * edge of one piece, its kerf on the outer side, and meets no other piece. Sound: where it says yes there is an order of cuts.
 *
 * @param rings counter-clockwise, as they lie in the tile.
 * @param kerf width that the blade takes away.
 * @example sawsApart([[[0, 0], [4, 0], [4, 9], [0, 9]], [[6, 0], [9, 0], [9, 9], [6, 9]]], 2) //=> true
 * @example sawsApart([[[0, 0], [4, 0], [4, 9], [0, 9]], [[6, 0], [9, 0], [9, 9], [6, 9]]], 3) //=> false
 */
export function sawsApart(rings: readonly Ring[], kerf: Ticks): boolean {
  if (rings.length < 2) return true;
  return rings.some((ring, i) =>
    ring.some((_, edge) => {
      const parted = partAlong(rings, i, edge, kerf);
      return parted !== undefined && sawsApart(parted.near, kerf) && sawsApart(parted.far, kerf);
    }),
  );
}

/** The pieces on both sides of a saw line along an edge, or nothing where it meets a piece or parts none. */
function partAlong(
  rings: readonly Ring[],
  of: number,
  edge: number,
  kerf: Ticks,
): { near: Ring[]; far: Ring[] } | undefined {
  const own = rings[of]!;
  const [a, b] = [own[edge]!, own[(edge + 1) % own.length]!];
  const size = distancePoints(a, b);
  const near: Ring[] = [own];
  const far: Ring[] = [];
  for (let i = 0; i < rings.length; i++) {
    if (i === of) continue;
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const point of rings[i]!) {
      const out = -side(a, b, point) / size;
      if (out < least) least = out;
      if (out > most) most = out;
      if (most > 0 && least < kerf) return undefined;
    }
    if (most <= 0) near.push(rings[i]!);
    else if (least >= kerf) far.push(rings[i]!);
    else return undefined;
  }
  return far.length === 0 ? undefined : { near, far };
}
