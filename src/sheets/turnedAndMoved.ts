import type { Point } from '../geometry/index.ts';

/** A point of a cut where a plan of tiles has it: turned counter-clockwise about the origin, then moved. */
export function turnedAndMoved([x, y]: Point, degrees: number, [byX, byY]: Point): Point {
  const radians = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return [x * cos - y * sin + byX, x * sin + y * cos + byY];
}
