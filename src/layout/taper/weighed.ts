import type { Weighed } from './bestDirection.ts';
import type { WallLine } from './wallLines.ts';

/** Walls as they weigh on the choice of a direction: a focal one so many times a plain one, a hidden one nothing. */
export function weighed(lines: readonly WallLine[], focalWeight: number): Weighed[] {
  const weights = { focal: focalWeight, plain: 1, hidden: 0 };
  return lines.map(({ off, length, seen }) => ({ off, weight: length * weights[seen] }));
}
