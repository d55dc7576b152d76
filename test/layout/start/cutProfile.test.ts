import { describe, expect, test } from 'vitest';
import { cutProfile } from '../../../src/layout/start/search/cutProfile.ts';
import { tileOutline } from '../../../src/pattern/tileOutline.ts';

const spec = { joint: 1016, repeat: 100_000, minShare: 0.5, strip: 12_192 };

describe('the depth at which what a wall leaves of a tile is no strip any more', () => {
  test.each([
    [96_000, 24_000],
    [96_000, 40_000],
  ])('is more than the least strip at the sharp tip of a rhombus %i by %i', (length, width) => {
    const ring = tileOutline({ length, width, shape: { kind: 'rhombus' } });
    const half = Math.atan2(width, length);
    // Arithmetic: a tip of angle 2a and depth d is d / cos a along its side, and its slot is across from that side, 2 d sin a.
    expect(cutProfile({ ...spec, ring }, [1, 0]).strip).toBeCloseTo(12_192 / (2 * Math.sin(half)), -1);
  });

  test.each([
    ['the end of a rectangle', tileOutline({ length: 96_000, width: 48_000 }), [1, 0]],
    ['its corner', tileOutline({ length: 96_000, width: 48_000 }), [Math.SQRT1_2, Math.SQRT1_2]],
    [
      'the point of a hexagon',
      tileOutline({ length: 80_000, width: 92_376, shape: { kind: 'hexagon' } }),
      [0, 1],
    ],
  ] as const)('is the least strip at %s', (_, ring, normal) => {
    expect(cutProfile({ ...spec, ring }, normal).strip).toBe(12_192);
  });
});

test('a dent that rounding leaves in a tile changes nothing', () => {
  const [round, dented] = [0, 3].map(
    (dent) =>
    cutProfile({ ...spec, ring: [[0, 0], [40_000, dent], [80_000, 0], [80_000, 50_000], [0, 50_000]] }, [0, -1]), // biome-ignore format: a ring on a line
  );
  expect(dented).toEqual(round);
});
