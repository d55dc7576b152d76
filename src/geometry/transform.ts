import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { ringArea } from './ringArea.ts';
import type { Shape } from './Shape.ts';

/**
 * A point turned about the origin, counter-clockwise, `turn` in radians. Not rounded; quarter turns are
 * exact.
 *
 * @example rotate([4, 3], Math.PI / 2) //=> [-3, 4]
 */
export function rotate([x, y]: Point, turn: number): Point {
  const [cos, sin] = [exact(Math.cos(turn)), exact(Math.sin(turn))];
  return [x * cos - y * sin + 0, x * sin + y * cos + 0];
}

/** A quarter turn in radians is not quite one in binary: what is left of its sine or cosine is dropped. */
function exact(ratio: number): number {
  return Math.abs(ratio) < 1e-14 ? 0 : ratio;
}

/**
 * A point turned about the origin and rounded to ticks.
 *
 * @example rotateRound([1000, 0], Math.PI / 6) //=> [866, 500]
 */
export function rotateRound(point: Point, turn: number): Point {
  const [x, y] = rotate(point, turn);
  return [Math.round(x) + 0, Math.round(y) + 0];
}

/**
 * A point moved by `by`.
 *
 * @example translate([4, 3], [10, -1]) //=> [14, 2]
 */
export function translate([x, y]: Point, by: Point): Point {
  return [x + by[0], y + by[1]];
}

/**
 * A point mirrored left to right: x changes its sign.
 *
 * @example mirrorX([4, 3]) //=> [-4, 3]
 */
export function mirrorX([x, y]: Point): Point {
  return [0 - x, y];
}

/**
 * A ring with each point moved by `move`. It keeps its first point and its sense of rotation: where the
 * move mirrors, it is walked the other way.
 *
 * @example transformRing([[0, 0], [4, 0], [4, 3]], mirrorX) //=> [[0, 0], [-4, 3], [-4, 0]]
 */
export function transformRing(ring: Ring, move: (point: Point) => Point): Ring {
  const moved = ring.map(move);
  const mirrored = ringArea(moved) * ringArea(ring) < 0;
  return mirrored ? [moved[0]!, ...moved.slice(1).reverse()] : moved;
}

/**
 * A shape with each point moved by `move`.
 *
 * @example transformShape({outer: [[0, 0], [4, 0], [4, 3]], holes: []}, (p) => translate(p, [1, 1])) //=> {outer: [[1, 1], [5, 1], [5, 4]], holes: []}
 */
export function transformShape(shape: Shape, move: (point: Point) => Point): Shape {
  return {
    outer: transformRing(shape.outer, move),
    holes: shape.holes.map((hole) => transformRing(hole, move)),
  };
}
