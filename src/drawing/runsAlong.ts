import { type Box, boxOf, grow } from './boxes.ts';
import { type BoxIndex, boxIndex } from './boxIndex.ts';
import type { Spot } from './Mark.ts';

type Line = readonly [Spot, Spot];

/** A leader that lies this near to another line, in mm, at less than this angle, in degrees, for more than so many mm, is taken for it. */
const near = { off: 1, degrees: 15, mm: 2 } as const;
const leastSine = Math.sin((near.degrees * Math.PI) / 180);

/**
 * Whether one line runs along another: nearly in its direction and beside it, so that an eye takes one for the other.
 *
 * @example runsAlong([[0, 0.5], [9, 0.5]], [[4, 0], [20, 0]]) //=> true
 * @example runsAlong([[0, -2], [9, 2]], [[4, 0], [20, 0]]) //=> false
 * @example runsAlong([[0, 1.5], [9, 1.5]], [[4, 0], [20, 0]]) //=> false
 */
export function runsAlong([from, to]: Line, [a, b]: Line): boolean {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const ex = to[0] - from[0];
  const ey = to[1] - from[1];
  // Most lines lie across: what is squared needs no root, and they are many.
  const cross = dx * ey - dy * ex;
  if (cross * cross >= leastSine * leastSine * (dx * dx + dy * dy) * (ex * ex + ey * ey)) return false;
  const long = Math.hypot(dx, dy);
  const side = Math.hypot(ex, ey);
  if (long === 0 || side === 0) return false;
  const ux = dx / long;
  const uy = dy / long;
  const beside = between(across(from, a, ux, uy), across(to, a, ux, uy), -near.off, near.off);
  const over = between(ahead(from, a, ux, uy), ahead(to, a, ux, uy), 0, long);
  return (Math.min(beside[1], over[1]) - Math.max(beside[0], over[0])) * side > near.mm;
}

/** How far a spot lies from another along a direction, and off it to its left. */
function ahead([x, y]: Spot, [fromX, fromY]: Spot, ux: number, uy: number): number {
  return (x - fromX) * ux + (y - fromY) * uy;
}
function across([x, y]: Spot, [fromX, fromY]: Spot, ux: number, uy: number): number {
  return (y - fromY) * ux - (x - fromX) * uy;
}

/** Between which shares of the way from p to q a figure lies between two others. */
function between(p: number, q: number, low: number, high: number): readonly [number, number] {
  if (p === q) return p > low && p < high ? [0, 1] : [1, 0];
  const [one, other] = [(low - p) / (q - p), (high - p) / (q - p)];
  return [Math.max(0, Math.min(one, other)), Math.min(1, Math.max(one, other))];
}

/** Tells of lines whether they run along any of many. */
export function alongAny(lines: readonly Line[]): (line: Line) => boolean {
  let made: { readonly byBox: ReadonlyMap<Box, Line>; readonly index: BoxIndex } | undefined;
  const indexed = () => {
    // No line runs along one that is shorter than what is taken for it.
    const own = lines.filter(([[x, y], [u, v]]) => Math.hypot(u - x, v - y) > near.mm);
    const byBox = new Map<Box, Line>(own.map((line) => [boxOf(line), line]));
    return { byBox, index: boxIndex([...byBox.keys()]) };
  };
  return (line) => {
    made ??= indexed();
    const { byBox, index } = made;
    return index.some(grow(boxOf(line), near.off), (box) => runsAlong(line, byBox.get(box)!));
  };
}
