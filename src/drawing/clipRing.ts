import type { Box } from './boxes.ts';
import type { Spot } from './Mark.ts';

/** How far a spot lies inside each side of a box; negative outside. */
const sides = [
  ([x]: Spot, { left }: Box) => x - left,
  ([x]: Spot, { right }: Box) => right - x,
  ([, y]: Spot, { bottom }: Box) => y - bottom,
  ([, y]: Spot, { top }: Box) => top - y,
] as const;

/**
 * The part of a closed ring that lies in a box, as one ring (Sutherland–Hodgman clipping): parts of a hollow ring that fall
 * apart stay joined along the box's side. Empty where nothing of it lies inside.
 *
 * @example clipRing([[0, 0], [4, 0], [4, 2], [0, 2]], { left: 1, bottom: 0, right: 9, top: 9 }) //=> [[1, 0], [4, 0], [4, 2], [1, 2]]
 * @example clipRing([[0, 0], [4, 0], [4, 2]], { left: 5, bottom: 0, right: 9, top: 9 }) //=> []
 */
export function clipRing(ring: readonly Spot[], box: Box): readonly Spot[] {
  return sides.reduce<readonly Spot[]>((kept, inside) => clipSide(kept, (spot) => inside(spot, box)), ring);
}

function clipSide(ring: readonly Spot[], inside: (spot: Spot) => number): readonly Spot[] {
  return ring.flatMap((spot, i) => {
    const before = ring.at(i - 1)!;
    const [from, to] = [inside(before), inside(spot)];
    const share = from / (from - to);
    const crossing: Spot = [
      before[0] + (spot[0] - before[0]) * share,
      before[1] + (spot[1] - before[1]) * share,
    ];
    const own = to >= 0 ? [spot] : [];
    return from < 0 !== to < 0 ? [crossing, ...own] : own;
  });
}
