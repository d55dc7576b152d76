import { type Point, segmentsMeet } from '../geometry/index.ts';
import type { Spot } from './Mark.ts';

/** Whether a spot lies inside rings by the even-odd rule, so that a hole in a ring is outside. */
export function inRings([x, y]: Spot, rings: readonly (readonly Spot[])[]): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 1) {
      const [ax, ay] = ring[i]!;
      const [bx, by] = ring[i + 1] ?? ring[0]!;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    }
  }
  return inside;
}

/** Whether two leaders meet. */
export function segmentsCross(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  return segmentsMeet(a as Point, b as Point, c as Point, d as Point);
}
