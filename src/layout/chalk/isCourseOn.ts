import type { ChalkLine } from '../Layout.ts';

/**
 * Whether the course of a row has joints on an upright chalk line: each has where none is shifted.
 *
 * @example isCourseOn({ first: 1, every: 2 }, -3) //=> true
 * @example isCourseOn({ first: 1, every: 2 }, 0) //=> false
 * @example isCourseOn({ first: 4, every: 0 }, 4) //=> true
 * @example isCourseOn(undefined, 7) //=> true
 */
export function isCourseOn(courses: ChalkLine['courses'], row: number): boolean {
  if (!courses) return true;
  const { first, every } = courses;
  return every > 0 ? (row - first) % every === 0 : row === first;
}
