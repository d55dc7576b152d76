import type { Spot } from './Mark.ts';

/** A rectangle on the paper in mm, upright. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/**
 * Whether two boxes come nearer to each other than `apart` mm.
 *
 * @example overlap({ left: 0, bottom: 0, right: 2, top: 2 }, { left: 3, bottom: 0, right: 5, top: 2 }) //=> false
 * @example overlap({ left: 0, bottom: 0, right: 2, top: 2 }, { left: 3, bottom: 0, right: 5, top: 2 }, 1.5) //=> true
 */
export function overlap(a: Box, b: Box, apart = 0): boolean {
  return (
    a.left < b.right + apart &&
    b.left < a.right + apart &&
    a.bottom < b.top + apart &&
    b.bottom < a.top + apart
  );
}

/** The box of a size round its middle. */
export function boxRound([x, y]: Spot, width: number, height: number): Box {
  return { left: x - width / 2, bottom: y - height / 2, right: x + width / 2, top: y + height / 2 };
}

export function grow(box: Box, by: number): Box {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by };
}

/** Whether the first box lies wholly in the second. */
export function within(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.bottom >= outer.bottom &&
    inner.top <= outer.top
  );
}

/** The smallest box that holds the spots. */
export function boxOf(spots: readonly Spot[]): Box {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of spots) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { left, bottom, right, top };
}

/** The smallest box that holds the boxes. */
export function boxRoundAll(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    bottom: Math.min(...boxes.map(({ bottom }) => bottom)),
    right: Math.max(...boxes.map(({ right }) => right)),
    top: Math.max(...boxes.map(({ top }) => top)),
  };
}

/** Corners counter-clockwise from the lower left. */
export function corners(box: Box): readonly Spot[] {
  return [
    [box.left, box.bottom],
    [box.right, box.bottom],
    [box.right, box.top],
    [box.left, box.top],
  ];
}

/** Whether the segment a–b meets the box, grown by `about` mm (Liang–Barsky clipping). */
export function segmentMeets([ax, ay]: Spot, [bx, by]: Spot, box: Box, about = 0): boolean {
  const left = box.left - about;
  const right = box.right + about;
  const bottom = box.bottom - about;
  const top = box.top + about;
  // Most segments lie wholly on one side of the box, and this is asked a million times a plan.
  if ((ax < left && bx < left) || (ax > right && bx > right)) return false;
  if ((ay < bottom && by < bottom) || (ay > top && by > top)) return false;
  // A segment that is level or upright lies between the two sides it runs along, or it would have been told above.
  const [dx, dy] = [bx - ax, by - ay];
  const [inX, outX] = dx > 0 ? [left - ax, right - ax] : [right - ax, left - ax];
  const [inY, outY] = dy > 0 ? [bottom - ay, top - ay] : [top - ay, bottom - ay];
  const from = Math.max(0, dx === 0 ? 0 : inX / dx, dy === 0 ? 0 : inY / dy);
  const to = Math.min(1, dx === 0 ? 1 : outX / dx, dy === 0 ? 1 : outY / dy);
  return from <= to;
}
