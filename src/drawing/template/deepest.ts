import { distancePointSegment, intersect, poleOfInaccessibility, type Shape } from '../../geometry/index.ts';
import { type Box, corners } from '../boxes.ts';
import type { Spot } from '../Mark.ts';
import { mmPerTick } from '../Scale.ts';

const perTick = mmPerTick(1);

const spot = ([x, y]: readonly [number, number]): Spot => [x * perTick, y * perTick];

/** Each part of shapes, in ticks, that lies in a box of mm: its deepest spot, and how far that is from the part's sides, in mm. */
export function deepest(shapes: readonly Shape[], box: Box) {
  const window = corners(box).map(([x, y]) => [Math.round(x / perTick), Math.round(y / perTick)] as const);
  const seen = intersect(shapes, [{ outer: window, holes: [] }]);
  return seen.map((shape) => {
    const at = poleOfInaccessibility(shape, 160);
    const rings = [shape.outer, ...shape.holes];
    const room = Math.min(
      ...rings.flatMap((ring) =>
        ring.map((a, i) => distancePointSegment(at, a, ring[(i + 1) % ring.length]!)),
      ),
    );
    return { at: spot(at), room: room * perTick };
  });
}
