import type { Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';

/** A pattern, where it starts, and the middle of what it lies on. */
export interface Course {
  readonly pattern: Pick<Pattern, 'b'>;
  readonly origin: Point;
  readonly middle: Point;
}

/** Where a course's joints count from: of courses that step by a length, the one at the middle. */
export function courseOrigin({ pattern: { b }, origin, middle }: Course): Point {
  const course = b[0] === 0 ? 0 : Math.round((middle[1] - origin[1]) / b[1]);
  return [origin[0] + course * b[0], origin[1] + course * b[1]];
}
