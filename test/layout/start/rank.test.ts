import { expect, test } from 'vitest';
import { rank } from '../../../src/layout/start/rank.ts';

const plain = {
  pieces: 70,
  whole: 40,
  cut: 30,
  cutLength: 100_000,
  smallestShare: 0.6,
  smallest: 40_000,
  underHalf: 0,
  nearFull: 0,
  webFaults: 0,
  hardCuts: 0,
  shift: 0,
};

test('a start with pieces that no saw can cut comes last, however wide its cuts in sight are (common practice, no source)', () => {
  const slivers = { ...plain, slivers: 3, smallestShare: 0.68 };
  const sawn = { ...plain, slivers: 0, smallestShare: 0.61, shift: 9000 };
  expect(rank([slivers, sawn])).toEqual([sawn, slivers]);
});

test('of starts that can be sawn the one with the largest smallest piece in sight comes first', () => {
  const wide = { ...plain, smallestShare: 0.62, pieces: 80, shift: 9000 };
  expect(rank([plain, wide])).toEqual([wide, plain]);
});

test('where those are alike to a tick, the one nearer to balance', () => {
  const even = { ...plain, smallestShare: 0.5999, pieces: 80 };
  const moved = { ...plain, shift: 5000 };
  expect(rank([moved, even])).toEqual([even, moved]);
});
