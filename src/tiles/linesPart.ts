import { convexHull, type Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import { clearApart } from './clearApart.ts';
import { sawsApart } from './sawsApart.ts';

/**
 * Whether straight cuts right across what is left, in any direction, could part convex pieces: each cut has some of them on one
 * side and the rest a kerf away on the other.
 *
 * @example linesPart([[[0, 0], [4, 0], [4, 4], [0, 4]], [[5, 6], [9, 6], [9, 9], [5, 9]]], 2) //=> true
 */
export function linesPart(rings: readonly Ring[], kerf: Ticks): boolean {
  if (rings.length < 2) return true;
  if (rings.length === 2) return clearApart(rings[0]!, rings[1]!, kerf) >= kerf;
  if (sawsApart(rings, kerf)) return true;
  // The first piece is on the near side; each bit of the mask puts one of the others there as well.
  for (let mask = 0; mask < 2 ** (rings.length - 1) - 1; mask++) {
    const near = rings.filter((_, i) => i === 0 || (mask >> (i - 1)) & 1);
    const far = rings.filter((_, i) => i > 0 && !((mask >> (i - 1)) & 1));
    if (apart(near, far, kerf) >= kerf && linesPart(near, kerf) && linesPart(far, kerf)) return true;
  }
  return false;
}

function apart(near: readonly Ring[], far: readonly Ring[], enough: Ticks): number {
  const hull = (rings: readonly Ring[]) => (rings.length === 1 ? rings[0]! : convexHull(rings.flat()));
  return clearApart(hull(near), hull(far), enough);
}
