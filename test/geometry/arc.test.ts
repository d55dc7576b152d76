import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcOffset, arcPlaces, arcThrough, type Point, radiusOf } from '../../src/geometry/index.ts';

const IN = 8128;

describe('the circle over a chord', () => {
  // Machinery's Handbook, circular segments: r = (c² + 4h²) / 8h (from memory). The whole-number ones are of right triangles, arithmetic.
  test.each([
    [8, 2, 5],
    [24, 8, 13],
    [10, 5, 5],
    [96, 6, 195],
    [120, 0.25, 7200.125],
  ])('chord %d, rise %d: radius %d', (chord, rise, radius) => {
    expect(radiusOf(chord, rise)).toBeCloseTo(radius, 9);
  });

  const chords = fc.record({
    x: fc.integer({ min: 40 * IN, max: 200 * IN }),
    y: fc.integer({ min: -90 * IN, max: 90 * IN }),
    share: fc.double({ min: 0.0005, max: 0.5, noNaN: true }),
    out: fc.boolean(),
  });

  test('goes through both ends, and through the middle on the side that is told', () => {
    fc.assert(
      fc.property(chords, ({ x, y, share, out }) => {
        const chord = Math.hypot(x, y);
        const rise = (out ? 1 : -1) * share * chord;
        const { centre, radius } = arcThrough([0, 0], [x, y], rise);
        const middle: Point = [x / 2 + (y / chord) * rise, y / 2 - (x / chord) * rise];
        for (const [px, py] of [[0, 0], [x, y], middle] as Point[])
          expect(Math.abs(Math.hypot(px - centre[0], py - centre[1]) - radius)).toBeLessThan(0.01);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  test('stands off its chord as its points do', () => {
    fc.assert(
      fc.property(chords, fc.double({ min: 0, max: 1, noNaN: true }), ({ x, share, out }, part) => {
        const rise = (out ? 1 : -1) * share * x;
        const { centre, radius } = arcThrough([0, 0], [x, 0], rise);
        const off = arcOffset(x, rise, part * x);
        // To the right of a chord along x is down.
        expect(Math.abs(Math.hypot(part * x - centre[0], -off - centre[1]) - radius)).toBeLessThan(0.01);
      }),
      { seed: 2, numRuns: 300 },
    );
  });
});

describe('straight lines for an arc', () => {
  // The rise of a chord over its arc, s = r − √(r² − c²/4): Machinery's Handbook (from memory).
  const worst = (chord: number, rise: number, places: readonly number[]) => {
    const radius = radiusOf(chord, rise);
    const points = [0, ...places, chord].map((u): Point => [u, arcOffset(chord, rise, u)]);
    const rises = points.slice(1).map(([u, v], i) => {
      const half = Math.hypot(u - points[i]![0], v - points[i]![1]) / 2;
      return radius - Math.sqrt(Math.max(0, radius * radius - half * half));
    });
    return Math.max(...rises);
  };

  test('six for a bow of 1/4 in over 10 ft', () => {
    expect(arcPlaces(120 * IN, IN / 4, 63)).toHaveLength(5);
  });

  test('keep within what is allowed, two fewer do not, and the middle is one of their ends', () => {
    const rooms = fc.record({
      chord: fc.integer({ min: 20 * IN, max: 240 * IN }),
      share: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
      allowed: fc.constantFrom(20, 63, 127, 508),
    });
    fc.assert(
      fc.property(rooms, ({ chord, share, allowed }) => {
        const rise = share * chord;
        const places = arcPlaces(chord, rise, allowed);
        expect(worst(chord, rise, places)).toBeLessThan(allowed + 0.01);
        expect(places[(places.length - 1) / 2]).toBeCloseTo(chord / 2, 6);
        if (places.length > 1) {
          const whole = 4 * Math.atan((2 * rise) / chord);
          const fewer = radiusOf(chord, rise) * (1 - Math.cos(whole / (places.length - 1) / 2));
          expect(fewer).toBeGreaterThan(allowed - 0.01);
        }
      }),
      { seed: 3, numRuns: 300 },
    );
  });
});
