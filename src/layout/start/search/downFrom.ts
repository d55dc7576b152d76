import type { Point } from '../../../geometry/index.ts';
import type { PlaceQuestion } from './PlaceQuestion.ts';

const WAYS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, -1],
  [2, 1],
  [-2, -1],
  [1, 2],
  [-1, -2],
  [2, -1],
  [-2, 1],
  [1, -2],
  [-1, 2],
] as const;

/**
 * From a place down a cost, in steps that grow shorter from `longest` to one tick, each way that the question leaves open. A cost that
 * is not below what it is held against may be told as any such.
 */
export function downFrom(
  { low, high }: Pick<PlaceQuestion, 'low' | 'high'>,
  from: Point,
  cost: (place: Point, below: number) => number,
  longest: number,
): Point {
  const ways = WAYS.filter(([, v]) => v === 0 || low[1] !== high[1]);
  let [place, best] = [from, cost(from, Infinity)];
  for (let step = longest; step >= 1; step /= 2) {
    for (let moved = true; moved; ) {
      moved = false;
      for (const [u, v] of ways) {
        const next: Point = [place[0] + u * step, place[1] + v * step];
        const below = best - 1e-9;
        const found = cost(next, below);
        if (found < below) [place, best, moved] = [next, found, true];
      }
    }
  }
  return place;
}
