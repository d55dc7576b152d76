import { cleanRing } from './cleanRing.ts';
import { byHeight, fromLowest } from './fromLowest.ts';
import { isSliver } from './isSliver.ts';
import type { Ring } from './Ring.ts';
import { ringArea } from './ringArea.ts';
import type { Shape } from './Shape.ts';
import { splitTouching } from './splitTouching.ts';
import { whereInRing } from './whereInRing.ts';

/**
 * Shapes from loose rings that do not cross: counter-clockwise ones are outer rings, each clockwise one
 * is a hole of the smallest outer ring round it. Slivers are dropped, straight points taken out; rings begin
 * at their lowest point and come in that order.
 *
 * @example shapesOf([[[0, 0], [9, 0], [9, 9], [0, 9]], [[2, 2], [2, 5], [5, 5], [5, 2]]]) //=> [{outer: [[0, 0], [9, 0], [9, 9], [0, 9]], holes: [[[2, 2], [2, 5], [5, 5], [5, 2]]]}]
 */
export function shapesOf(rings: readonly Ring[]): Shape[] {
  const parts = rings.flatMap((ring) => splitTouching(cleanRing(ring)).map(cleanRing));
  const whole = parts.filter((ring) => !isSliver(ring)).map(fromLowest);
  whole.sort((a, b) => byHeight(a[0]!, b[0]!));
  const outers = whole.filter((ring) => ringArea(ring) > 0);
  const holes = whole.filter((ring) => ringArea(ring) < 0);
  const owners = holes.map((hole) => ownerOf(hole, outers));
  return outers.map((outer) => ({ outer, holes: holes.filter((_, i) => owners[i] === outer) }));
}

function ownerOf(hole: Ring, outers: readonly Ring[]): Ring | undefined {
  if (outers.length === 1) return outers[0];
  const round = outers.filter((outer) => holds(outer, hole));
  return round.sort((a, b) => ringArea(a) - ringArea(b))[0];
}

/** A hole may touch its outer ring, so the first of its points that is not on that ring decides. */
function holds(outer: Ring, hole: Ring): boolean {
  for (const point of hole) {
    const where = whereInRing(point, outer);
    if (where !== 'on') return where === 'inside';
  }
  return Math.abs(ringArea(hole)) < ringArea(outer);
}
