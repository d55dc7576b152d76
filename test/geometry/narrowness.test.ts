import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { narrowness, type Point, type Ring } from '../../src/geometry/index.ts';

const point = fc.tuple(fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: -5000, max: 5000 }));

/** How wide a slot at an angle must be for a ring to pass through. */
function slotAt(ring: Ring, angle: number): number {
  const off = ring.map(([x, y]) => x * Math.cos(angle) + y * Math.sin(angle));
  return Math.max(...off) - Math.min(...off);
}

/** The narrowest slot: one of its sides lies along two of the ring's points. */
function byTrying(ring: Ring): number {
  const angles = ring.flatMap(([x, y], i) => ring.slice(i + 1).map(([u, v]) => Math.atan2(u - x, -(v - y))));
  return Math.min(...angles.map((angle) => slotAt(ring, angle)));
}

describe('the narrowest slot that a ring passes through', () => {
  test('is what trying every pair of its points gives, whatever way round it goes and however it bends', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 9 }), (ring) => {
        expect(narrowness(ring)).toBeCloseTo(byTrying(ring), 3);
      }),
    );
  });

  test('is that of a convex piece, too', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), fc.integer({ min: 10, max: 5000 }), (sides, radius) => {
        const ring = Array.from({ length: sides }, (_, i): Point => {
          const angle = (2 * Math.PI * i) / sides;
          return [Math.round(2 * radius * Math.cos(angle)), Math.round(radius * Math.sin(angle))];
        });
        expect(narrowness(ring)).toBeCloseTo(byTrying(ring), 3);
        expect(narrowness([...ring].reverse())).toBeCloseTo(byTrying(ring), 3);
      }),
    );
  });

  test('is not fooled by a ring that turns left throughout but goes round twice', () => {
    const star: Ring = [0, 2, 4, 1, 3].map((i): Point => {
      const angle = (2 * Math.PI * i) / 5;
      return [Math.round(1000 * Math.cos(angle)), Math.round(1000 * Math.sin(angle))];
    });
    expect(narrowness(star)).toBeCloseTo(byTrying(star), 3);
  });
});
