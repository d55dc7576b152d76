import { describe, expect, test } from 'vitest';
import { bendsOf } from '../../src/cuts/bendsOf.ts';
import type { Point } from '../../src/geometry/index.ts';

/** A piece of one of the random rooms, between a curved wall and a nearly straight one that bows. */
const ring: readonly Point[] = [
  [158134, 0],
  [153976, 5246],
  [147779, 12302],
  [141243, 19025],
  [134368, 25420],
  [127188, 31451],
  [121750, 35571],
  [121763, 35540],
  [35871, 0],
];
const curves = [
  { centre: [11203, -113904] as Point, radius: 185960 },
  { centre: [173042402, -418317894] as Point, radius: 452682166 },
];

describe('a piece between two curved walls', () => {
  const bent = bendsOf(
    ring.map((at) => ({ at })),
    curves,
    254,
    (from, to) => from[1] === 0 && to[1] === 0,
  );

  test('keeps the corner in which they meet', () => {
    expect(bent.map(({ at }) => at)).toEqual([
      [158134, 0],
      [121763, 35540],
      [35871, 0],
    ]);
  });

  test('follows the deep curve by way of its middle, and the flat one straight', () => {
    expect(bent.map(({ via }) => via !== undefined)).toEqual([true, false, false]);
  });
});
