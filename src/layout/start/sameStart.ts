import type { Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Choice } from './Choice.ts';

/** A shift along one direction can come to the same as one along the other: each start is tried once. */
export function distinct(choices: readonly Choice[], pattern: Pattern): Choice[] {
  const kept: Choice[] = [];
  for (const one of [...choices].sort((a, b) => a.shift - b.shift)) {
    if (!kept.some(({ origin }) => sameStart(origin, one.origin, pattern))) kept.push(one);
  }
  return kept;
}

/** Whether two origins put the same tiles on the floor, to within so many ticks; as told, to within rounding. */
export function sameStart(p: Point, q: Point, { a, b }: Pick<Pattern, 'a' | 'b'>, within = 4): boolean {
  const [x, y] = [p[0] - q[0], p[1] - q[1]];
  const area = a[0] * b[1] - a[1] * b[0];
  const i = Math.round((x * b[1] - y * b[0]) / area);
  const j = Math.round((y * a[0] - x * a[1]) / area);
  const [u, v] = [x - i * a[0] - j * b[0], y - i * a[1] - j * b[1]];
  return u * u + v * v <= within * within;
}

/** How far two origins stand apart along x and y, courses and repeats that make no difference taken off; in ticks. */
export function apartOf(p: Point, q: Point, { a, b }: Pick<Pattern, 'a' | 'b'>): Point {
  const [x, y] = [p[0] - q[0], p[1] - q[1]];
  const courses = Math.round(y / b[1]);
  const shifted = x - courses * b[0];
  return [Math.abs(shifted - Math.round(shifted / a[0]) * a[0]), Math.abs(y - courses * b[1])];
}
