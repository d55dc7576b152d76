import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columnAndRow, makePattern, type Pattern } from '../../src/pattern/index.ts';
import { type PatternCase, patternCases } from './patternCases.ts';
import { areaOf, around, grown, jointsFrom, repeatArea, sharedArea } from './support/cells.ts';

const runs = process.env.LONG ? 400 : 12;
const make = ({ spec, tiles, joint }: PatternCase) => makePattern(spec, tiles, joint);
const holds = (sizes: fc.Arbitrary<PatternCase>, check: (pattern: Pattern, of: PatternCase) => void) =>
  fc.assert(
    fc.property(sizes, (of) => check(make(of), of)),
    { numRuns: runs, seed: 11 },
  );

const perimeter = (ring: Pattern['tiles'][number]['ring']) =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!;
    return sum + Math.hypot(u - x, v - y);
  }, 0);

/** Slanting sides and half steps are rounded to ticks; squares are not. */
const isSlanted = ({ tiles }: Pattern) =>
  tiles.some(({ ring }) =>
    ring.some(([x, y], i) => ring[(i + 1) % ring.length]!.every((v, at) => v !== [x, y][at])),
  );

describe.each(patternCases)('%s', (_, sizes) => {
  test('tiles and joints of one repeat add up to its area', () => {
    holds(sizes, (pattern) => {
      const cells = pattern.tiles.reduce((sum, { ring }) => sum + areaOf(grown(ring, pattern.joint / 2)), 0);
      const free = isSlanted(pattern)
        ? pattern.tiles.reduce((sum, { ring }) => sum + perimeter(ring), 0)
        : 1e-3;
      expect(Math.abs(cells - repeatArea(pattern))).toBeLessThanOrEqual(free);
    });
  });

  test('no tile, half a joint round it taken in, lies on another', () => {
    holds(sizes, (pattern) => {
      const cells = around(pattern, 2).map((one) => ({ ...one, ring: grown(one.ring, pattern.joint / 2) }));
      const own = cells.filter(({ i, j }) => i === 0 && j === 0);
      for (const one of own)
        for (const other of cells.filter((cell) => cell !== one))
          expect(sharedArea(one.ring, other.ring)).toBeLessThanOrEqual(2 * perimeter(one.ring));
    });
  });

  test('every side faces its neighbour across one joint', () => {
    holds(sizes, (pattern) => {
      const all = around(pattern, 3);
      for (const one of all.filter(({ i, j }) => i === 0 && j === 0)) {
        const joints = jointsFrom(
          one.ring,
          all.filter((other) => other !== one).map(({ ring }) => ring),
          pattern.joint,
        );
        for (const joint of joints) expect(Math.abs(joint - pattern.joint)).toBeLessThanOrEqual(2);
      }
      expect(pattern.closing).toBeUndefined();
    });
  });

  test('no two tiles share a column and a row', () => {
    holds(sizes, (pattern) => {
      const names = around(pattern, 6).map(({ k, i, j }) => columnAndRow(pattern, k, i, j).join(' '));
      expect(new Set(names).size).toBe(names.length);
    });
  });

  test('sides are convex and go round counter-clockwise, in whole ticks', () => {
    holds(sizes, ({ a, b, tiles }) => {
      expect([...a, ...b].every(Number.isInteger)).toBe(true);
      expect(repeatArea({ a, b })).toBeGreaterThan(0);
      for (const { ring } of tiles) {
        expect(ring.flat().every(Number.isInteger)).toBe(true);
        expect(areaOf(ring)).toBeGreaterThan(0);
      }
    });
  });
});
