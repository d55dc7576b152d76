import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipConvex, isConvex, ringArea } from '../../src/geometry/index.ts';
import {
  convexRing,
  disagreement,
  judge,
  rectangle,
  roundingAllowance,
  shape,
  starRing,
  toJsts,
} from './oracle.ts';

describe('clipping a tile by a convex ring', () => {
  it('agrees with JSTS on random convex rings, to a tick along the edges', () => {
    fc.assert(
      fc.property(convexRing(), convexRing(90000), (tile, window) => {
        const ours = clipConvex(tile, window).map((outer) => shape(outer));
        const theirs = judge.intersection(toJsts([shape(tile)]), toJsts([shape(window)]));
        expect(ours.length).toBeLessThanOrEqual(1);
        expect(disagreement(ours, theirs)).toBeLessThanOrEqual(roundingAllowance([shape(tile)]));
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it('agrees with JSTS on a subject with hollows, which may fall apart', () => {
    fc.assert(
      fc.property(starRing(), convexRing(), (subject, window) => {
        const ours = clipConvex(subject, window).map((outer) => shape(outer));
        const theirs = judge.intersection(toJsts([shape(subject)]), toJsts([shape(window)]));
        expect(disagreement(ours, theirs)).toBeLessThanOrEqual(roundingAllowance([shape(subject)]));
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  it('returns a tile that is wholly inside as it is', () => {
    const tile = rectangle(100, 100, 50, 50);
    expect(clipConvex(tile, rectangle(0, 0, 900, 900))).toEqual([tile]);
    expect(clipConvex(tile, tile)).toEqual([tile]);
  });

  it('gives neighbours on two sides of one line the same corners', () => {
    const line = 0.37;
    const tile = rectangle(0, 0, 8128, 8128);
    const y = Math.round(8128 * line);
    const below = clipConvex(tile, [
      [-9000, -9000],
      [20000, -9000],
      [20000, y + 1000],
      [-9000, y - 1000],
    ])[0]!;
    const above = clipConvex(tile, [
      [20000, y + 1000],
      [20000, 30000],
      [-9000, 30000],
      [-9000, y - 1000],
    ])[0]!;
    const shared = below.filter((p) => above.some((q) => q[0] === p[0] && q[1] === p[1]));
    expect(shared).toHaveLength(2);
    expect(ringArea(below) + ringArea(above)).toBe(ringArea(tile));
    expect(isConvex(below)).toBe(true);
  });

  it('drops what is thinner than two ticks', () => {
    expect(clipConvex(rectangle(0, 0, 8128, 8128), rectangle(8127, -10, 500, 9000))).toEqual([]);
  });
});
