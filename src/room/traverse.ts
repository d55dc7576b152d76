import type { Point } from '../geometry/index.ts';

/**
 * By how many degrees the inner angles fail to make a closed figure: their sum less (n − 2) · 180.
 *
 * @example
 * angleMisclosureDeg([90, 90, 90, 91]) //=> 1
 * angleMisclosureDeg([90, 135, 135, 90, 90]) //=> 0
 */
export function angleMisclosureDeg(anglesDeg: readonly number[]): number {
  return anglesDeg.reduce((sum, angle) => sum + angle, 0) - (anglesDeg.length - 2) * 180;
}

/**
 * Legs of a walk with the room on the left: leg i has the i-th length, the first runs along +x, and at corner i the
 * walk turns by what the inner angle leaves of 180 degrees. Angles that do not sum to a closed figure are balanced
 * equally first, as in a survey.
 *
 * @example
 * traverse([3, 4], [90, 90]).length //=> 2
 */
export function traverse(lengths: readonly number[], anglesDeg: readonly number[]): Point[] {
  const share = angleMisclosureDeg(anglesDeg) / anglesDeg.length;
  let directionDeg = 0;
  return lengths.map((length, i): Point => {
    if (i > 0) directionDeg += 180 - (anglesDeg[i]! - share);
    const turn = (directionDeg * Math.PI) / 180;
    return [length * Math.cos(turn), length * Math.sin(turn)];
  });
}

/**
 * Corners of a walk that starts at the origin; the end of the last leg is left out.
 *
 * @example
 * cornersOfLegs([[3, 0], [0, 4], [-3, -4]]) //=> [[0, 0], [3, 0], [3, 4]]
 */
export function cornersOfLegs(legs: readonly Point[]): Point[] {
  const corners: Point[] = [[0, 0]];
  for (const leg of legs.slice(0, -1)) {
    const last = corners.at(-1)!;
    corners.push([last[0] + leg[0], last[1] + leg[1]]);
  }
  return corners;
}

/**
 * Turns and moves corners so that the first is the origin and the second lies on +x.
 *
 * @example
 * alignFirst([[1, 1], [1, 3], [0, 3]]) //=> [[0, 0], [2, 0], [2, 1]]
 */
export function alignFirst(corners: readonly Point[]): Point[] {
  const [x0, y0] = corners[0]!;
  const [dx, dy] = [corners[1]![0] - x0, corners[1]![1] - y0];
  const length = Math.hypot(dx, dy);
  return corners.map(([x, y], i): Point => {
    if (i === 0) return [0, 0];
    if (i === 1) return [length, 0];
    return [((x - x0) * dx + (y - y0) * dy) / length, ((y - y0) * dx - (x - x0) * dy) / length];
  });
}
