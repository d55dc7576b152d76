import { expect, test } from 'vitest';
import type { Point } from '../../../src/geometry/index.ts';
import { bestPlaces } from '../../../src/layout/start/search/bestPlaces.ts';
import { type PlaceQuestion, scorePlace } from '../../../src/layout/start/search/PlaceQuestion.ts';

/** A wall that a place suits by where it lies: a strip shows outside both stretches, and the narrow one has the wider cut. */
const NARROW = [5_100, 5_140] as const;
const LONG = [20_000, 40_000] as const;

function scoreAt(phase: number) {
  const isIn = ([from, to]: readonly [number, number]) => phase >= from && phase <= to;
  if (isIn(NARROW)) return { strips: 0, halves: 0, narrowest: 0.4 };
  if (isIn(LONG)) return { strips: 0, halves: 0, narrowest: 0.3 };
  return { strips: 90_000, halves: 0, narrowest: 0.45 };
}

const question: PlaceQuestion = {
  directions: [{ scores: scoreAt, row: [1, 0], at: 0 }],
  low: [0, 0],
  high: [60_000, 0],
  seeds: [],
  boxes: 100,
  slack: { strips: 8_128, halves: 24_384 },
};

test('a sound place is kept though one with a strip, a little wider, lies beside it', () => {
  const places: readonly Point[] = [[5_040], [5_120], [30_000]].map(([at]): Point => [at!, 0]);
  const good = places.map((place) => ({ place, score: scorePlace(question, place) }));
  const best = { strips: 0, halves: 0, narrowest: 0.4 };
  const [first] = bestPlaces(question, { best, bound: best, good }, -1);
  expect(first!.place[0]).toBeGreaterThanOrEqual(NARROW[0]);
  expect(first!.place[0]).toBeLessThanOrEqual(NARROW[1]);
});
