import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Job, SurfaceSpec } from '../../../src/job/Job.ts';
import { withMovement } from '../../../src/packet/withMovement.ts';
import { bayLimit } from '../../../src/trade/index.ts';
import { patternCasesFrom } from '../../pattern/patternCases.ts';
import { bayFaults, crossedPieces } from '../../support/judgeMovement.ts';
import { layOut } from '../../support/layOut.ts';
import { jobOf, surfaceOf } from '../../support/surfaceOf.ts';

/** Floors of each pattern: 2 in `npm test`, 100 in the long run. */
const FLOORS = process.env.LONG === '1' ? 100 : 2;
const FOOT = 12 * 8128;
const BARE = { cracks: [], hollow: [], joints: [], readings: [] };

const feet = (least: number, most: number) =>
  fc.integer({ min: least * 64, max: most * 64 }).map((parts) => (parts * FOOT) / 64);

/** A floor from small to several bays long: a rectangle, or round a corner. */
const floors = fc.record({
  width: feet(18, 60),
  height: feet(7, 26),
  cutOut: fc.option(fc.tuple(feet(4, 12), feet(2, 5))),
  exposure: fc.constantFrom('dry', 'wet', 'sun', 'outside' as const),
  turnedDeg: fc.constantFrom(0, 0, 90, 45, 30),
});

function surfaceFrom(
  { width, height, cutOut, exposure, turnedDeg }: typeof floors extends fc.Arbitrary<infer T> ? T : never,
  pattern: Partial<SurfaceSpec['pattern']>,
): SurfaceSpec {
  const [a, b] = cutOut ?? [0, 0];
  const rectangle = [[0, 0], [width, 0], [width, height], [0, height]] as const; // biome-ignore format: corners on a line
  const round = [[0, 0], [width, 0], [width, height - b], [width - a, height - b], [width - a, height], [0, height]] as const; // biome-ignore format: corners on a line
  return surfaceOf(cutOut ? round : rectangle, {
    pattern: { ...pattern, turnedDeg },
    over: { exposure },
  });
}

const base = { heated: false } as Job['base'];

const cases = patternCasesFrom(80000).map(([name, sizes], i) => [name, sizes, 20270305 + i] as const);

describe.each(cases)('soft joints of large floors in %s', (name, sizes, seed) => {
  const named = fc
    .sample(fc.tuple(floors, sizes), { seed, numRuns: FLOORS })
    .map(([floor, sized], i) => [`${i} ${floor.exposure} ${floor.turnedDeg}°`, floor, sized] as const);

  test.each(named)('%s: on joints, and no bay over its limit', (_, floor, { spec, tiles, joint }) => {
    const job = { ...jobOf(1, 1, joint), tiles, base };
    const surface = surfaceFrom(floor, spec);
    const { layout } = layOut(job, surface);
    const { movement, pieces, turn } = withMovement(job, surface, BARE, layout);
    const limit = bayLimit(floor.exposure);
    if (!movement) {
      expect(bayFaults({ pieces, turn, movement: { lines: [], limit } })).toEqual([]);
      return;
    }
    expect(movement.limit).toBe(limit);
    expect(crossedPieces({ pieces, turn, movement })).toEqual([]);
    const { straightX, straightY } = layout.pattern;
    for (const { axis } of movement.missing) expect(axis === 'along' ? straightX : straightY).toBe(false);
    if (movement.missing.length === 0) expect(bayFaults({ pieces, turn, movement })).toEqual([]);
    if (name === 'straight') expect(movement.missing).toEqual([]);
    for (const { length, parts } of movement.lines)
      expect(parts.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0)).toBe(
        length,
      );
  });
});
