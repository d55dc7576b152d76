import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { leftOf, unitAlong } from './unitAlong.ts';

/** A mitre longer than this many times the larger depth is cut off square: the corner is a spike. */
const LONGEST_MITRE = 4;

/**
 * The wedge at corner b, where a ring turns right from a–b to b–c, that two strips on the left of these
 * edges leave open: the points of the wedge that are within the depth of both edges' lines. A kite where
 * the depths are alike; a triangle where one is so much less that the other's line is never reached;
 * cut off square at a spike.
 *
 * @example mitreBetween([0, 0], [0, 9], [9, 9], 3, 3) //=> [[0, 9], [0, 12], [-3, 12], [-3, 9]]
 */
export function mitreBetween(a: Point, b: Point, c: Point, depthIn: number, depthOut: number): Ring {
  const [ux, uy] = unitAlong(a, b);
  const [vx, vy] = unitAlong(b, c);
  const cos = ux * vx + uy * vy;
  const sin = Math.abs(ux * vy - uy * vx);
  const first = leftOf(a, b, b, depthIn);
  const last = leftOf(b, c, b, depthOut);
  // How far the corner of the mitre lies ahead of `first` along a–b, and behind `last` along b–c.
  const ahead = (depthOut - depthIn * cos) / sin;
  const behind = (depthIn - depthOut * cos) / sin;
  if (ahead < 0) return [b, last, leftOf(a, b, b, depthOut / cos)];
  if (behind < 0) return [b, leftOf(b, c, b, depthIn / cos), first];
  const longest = LONGEST_MITRE * Math.max(depthIn, depthOut);
  if (Math.hypot(ahead, depthIn) <= longest) return [b, last, along(first, [ux, uy], ahead), first];
  // Both corners of the square end go beyond the tip by the larger depth, so nothing near it is kept.
  const beyond = Math.max(depthIn, depthOut);
  return [b, last, along(last, [-vx, -vy], beyond), along(first, [ux, uy], beyond), first];
}

function along(from: Point, [dx, dy]: Point, distance: number): Point {
  return [Math.round(from[0] + dx * distance), Math.round(from[1] + dy * distance)];
}
