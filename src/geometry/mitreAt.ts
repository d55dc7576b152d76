import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { leftOf, unitAlong } from './unitAlong.ts';

/** A mitre longer than this many times the larger depth is cut off square: the corner is a spike. */
const LONGEST_MITRE = 4;

/**
 * How two strips meet at a corner: at a `tip`, to which both run on, or with a `wedge` of its own between
 * their square ends.
 */
export type Mitre = { readonly tip: Point } | { readonly wedge: Ring };

/**
 * How two strips on the left of a–b and b–c meet where the ring turns right at b. They run on to the tip
 * where their far sides cross. Where one is so much less deep that the other's far side never reaches
 * it, a triangle closes the wedge to the lesser depth; at a spike the wedge is cut off square.
 *
 * @example mitreAt([0, 0], [0, 9], [9, 9], 3, 3) //=> {tip: [-3, 12]}
 * @example mitreAt([0, 0], [90, 0], [180, -52], 30, 10) //=> {wedge: [[90, 0], [95, 9], [90, 12]]}
 */
export function mitreAt(a: Point, b: Point, c: Point, depthIn: number, depthOut: number): Mitre {
  const [ux, uy] = unitAlong(a, b);
  const [vx, vy] = unitAlong(b, c);
  const cos = ux * vx + uy * vy;
  const sin = Math.abs(ux * vy - uy * vx);
  // How far the tip lies ahead of the first strip's end, and before the second one's start.
  const ahead = (depthOut - depthIn * cos) / sin;
  const before = (depthIn - depthOut * cos) / sin;
  const first = leftOf(a, b, b, depthIn);
  const last = leftOf(b, c, b, depthOut);
  if (ahead < 0) return { wedge: [b, last, leftOf(a, b, b, depthOut / cos)] };
  if (before < 0) return { wedge: [b, leftOf(b, c, b, depthIn / cos), first] };
  const deeper = Math.max(depthIn, depthOut);
  if (Math.hypot(ahead, depthIn) <= LONGEST_MITRE * deeper)
    return { tip: leftOf(a, b, onward(b, ux, uy, ahead), depthIn) };
  // The square end goes beyond the corner by the larger depth, so that nothing near the corner is kept.
  return {
    wedge: [b, last, round(onward(last, -vx, -vy, deeper)), round(onward(first, ux, uy, deeper)), first],
  };
}

function onward([x, y]: Point, dx: number, dy: number, distance: number): Point {
  return [x + dx * distance, y + dy * distance];
}

function round([x, y]: Point): Point {
  return [Math.round(x), Math.round(y)];
}
