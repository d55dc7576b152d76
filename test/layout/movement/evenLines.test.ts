import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenLines, type Stretch } from '../../../src/layout/movement/evenLines.ts';

const stretch: fc.Arbitrary<Stretch> = fc
  .record({
    to: fc.integer({ min: 20, max: 100 }),
    places: fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { maxLength: 9 }),
    wanted: fc.array(fc.nat(8), { maxLength: 3 }),
    limit: fc.integer({ min: 10, max: 60 }),
  })
  .map(({ to, places, wanted, limit }) => {
    const joints = places.filter((at) => at < to).sort((a, b) => a - b);
    return { from: 0, to, joints, limit, wanted: new Set(wanted.map((i) => joints[i] ?? -1)) };
  });

/** Every choice of joints that keeps the limit. */
function allChoices({ from, to, joints, limit }: Stretch): readonly (readonly number[])[] {
  const choices = Array.from({ length: 2 ** joints.length }, (_, bits) =>
    joints.filter((_joint, i) => (bits >> i) & 1),
  );
  return choices.filter((lines) => baysOf(from, to, lines).every((bay) => bay <= limit));
}

function baysOf(from: number, to: number, lines: readonly number[]): readonly number[] {
  return [...lines, to].map((at, i) => at - (lines[i - 1] ?? from));
}

describe('soft joints in one stretch of floor', () => {
  test('are those that trying every choice finds best: fewest, none too short, at corners, even', () => {
    fc.assert(
      fc.property(stretch, (one) => {
        const choices = allChoices(one);
        const found = evenLines(one);
        expect(found === undefined).toBe(choices.length === 0);
        if (!found) return;
        const figures = (lines: readonly number[]) => {
          const even = (one.to - one.from) / (lines.length + 1);
          const bays = baysOf(one.from, one.to, lines);
          const uneven = bays.reduce((sum, bay) => sum + (bay - even) ** 2, 0);
          const short = bays.filter((bay) => bay < even / 2).length;
          const met = lines.filter((at) => one.wanted.has(at)).length;
          return [lines.length, short, -met, Math.round(uneven * 1000)] as const;
        };
        const best = choices.map(figures).reduce((a, b) => (compare(b, a) < 0 ? b : a));
        expect(figures(found)).toEqual(best);
      }),
      { seed: 20270304, numRuns: 400 },
    );
  });
});

function compare(a: readonly number[], b: readonly number[]): number {
  return a.map((figure, i) => figure - b[i]!).find((off) => off !== 0) ?? 0;
}
