import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intersect, ringArea, type Shape, shapeArea, subtract, unite } from '../../src/geometry/index.ts';
import { disagreement, judge, rectangle, roundingAllowance, shape, starRing, toJsts } from './oracle.ts';

const rows = [
  ['intersect', intersect, judge.intersection],
  ['subtract', subtract, judge.difference],
  ['unite', (a: Shape[], b: Shape[]) => unite([...a, ...b]), judge.union],
] as const;

describe('overlaying shapes', () => {
  it.each(rows)('%s agrees with JSTS on random shapes, to a tick along their edges', (_, ours, theirs) => {
    fc.assert(
      fc.property(starRing(), starRing(), (p, q) => {
        const [a, b] = [[shape(p)], [shape(q)]];
        const off = disagreement(ours(a, b), theirs(toJsts(a), toJsts(b)));
        expect(off).toBeLessThanOrEqual(roundingAllowance(a, b));
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it.each(rows)('%s agrees with JSTS where edges coincide on a coarse grid', (_, ours, theirs) => {
    const side = fc.integer({ min: 1, max: 6 }).map((n) => n * 500);
    const box = fc.tuple(side, side, side, side).map(([x, y, w, h]) => [shape(rectangle(x, y, w, h))]);
    fc.assert(
      fc.property(box, box, (a, b) => {
        expect(disagreement(ours(a, b), theirs(toJsts(a), toJsts(b)))).toBe(0);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it('gives outer rings that run left about and holes that run right about', () => {
    fc.assert(
      fc.property(starRing(), starRing(), starRing(), (p, q, r) => {
        for (const piece of subtract([shape(p), shape(q)], [shape(r)])) {
          expect(ringArea(piece.outer)).toBeGreaterThan(0);
          for (const hole of piece.holes) expect(ringArea(hole)).toBeLessThan(0);
        }
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('splits what it takes and what it leaves into the whole', () => {
    fc.assert(
      fc.property(starRing(), starRing(), (p, q) => {
        const [a, b] = [[shape(p)], [shape(q)]];
        const parts = [...intersect(a, b), ...subtract(a, b)].reduce((sum, s) => sum + shapeArea(s), 0);
        expect(Math.abs(parts - ringArea(p))).toBeLessThanOrEqual(roundingAllowance(a, b));
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it('gives two pieces where a tile meets both legs of a U', () => {
    const u = shape(
      subtract([shape(rectangle(0, 0, 900, 900))], [shape(rectangle(300, 300, 300, 600))])[0]!.outer,
    );
    expect(intersect([shape(rectangle(100, 500, 700, 200))], [u]).map((s) => shapeArea(s))).toEqual([
      40000, 40000,
    ]);
  });

  it('keeps an inner hole as a hole of the ring round it', () => {
    const [frame, ...rest] = subtract(
      [shape(rectangle(0, 0, 900, 900))],
      [shape(rectangle(300, 300, 300, 300))],
    );
    expect(rest).toEqual([]);
    expect(frame!.holes).toHaveLength(1);
    expect(shapeArea(frame!)).toBe(720000);
  });

  it('keeps an island in a hole as a shape of its own', () => {
    const frame = subtract([shape(rectangle(0, 0, 900, 900))], [shape(rectangle(100, 100, 700, 700))]);
    const both = unite([...frame, shape(rectangle(300, 300, 300, 300))]);
    expect(both.map((s) => s.holes.length)).toEqual([1, 0]);
  });

  it('takes squares that meet in one corner apart', () => {
    expect(unite([shape(rectangle(0, 0, 500, 500)), shape(rectangle(500, 500, 500, 500))])).toHaveLength(2);
  });

  it('takes a hole that reaches the edge in one point as a hole or a bay of the right area', () => {
    const diamond = shape([
      [500, 0],
      [700, 300],
      [500, 600],
      [300, 300],
    ]);
    const left = subtract([shape(rectangle(0, 0, 1000, 1000))], [diamond]);
    expect(left.reduce((sum, s) => sum + shapeArea(s), 0)).toBe(1000000 - 120000);
    expect(left.every((s) => judge.valid(toJsts([s])))).toBe(true);
  });

  it('leaves no straight points and no repeated ones', () => {
    const [joined] = unite([shape(rectangle(0, 0, 500, 500)), shape(rectangle(500, 0, 500, 500))]);
    expect(joined!.outer).toEqual(rectangle(0, 0, 1000, 500));
  });

  it('drops the slivers that near-coincident edges leave', () => {
    const tile = shape(rectangle(0, 0, 96012, 96012));
    const field = shape([
      [-500, -500],
      [99000, -500],
      [96011, 50000],
      [96013, 99000],
      [-500, 99000],
    ]);
    expect(subtract([tile], [field])).toEqual([]);
    expect(intersect([tile], [shape(rectangle(96011, 0, 500, 96012))])).toEqual([]);
  });

  it('gives nothing for shapes that are apart or only touch', () => {
    expect(intersect([shape(rectangle(0, 0, 9, 9))], [shape(rectangle(9, 0, 9, 9))])).toEqual([]);
    expect(intersect([shape(rectangle(0, 0, 9, 9))], [shape(rectangle(50, 0, 9, 9))])).toEqual([]);
    expect(intersect([], [])).toEqual([]);
  });

  it('sees small tiles rightly among the far corners of a large room', () => {
    const tile = fc
      .tuple(fc.integer({ min: -90000, max: 90000 }), fc.integer({ min: -90000, max: 90000 }))
      .map(([x, y]) => shape(rectangle(x, y, 8000, 8000)));
    fc.assert(
      fc.property(starRing(), tile, (room, t) => {
        const theirs = judge.intersection(toJsts([t]), toJsts([shape(room)]));
        expect(disagreement(intersect([t], [shape(room)]), theirs)).toBeLessThanOrEqual(32000);
      }),
      { seed: 9, numRuns: 600 },
    );
  });

  it('is not led astray by a corridor that runs round a tile', () => {
    const ring = subtract([shape(rectangle(0, 0, 900, 900))], [shape(rectangle(100, 100, 700, 700))]);
    const corridor = subtract(ring, [shape(rectangle(700, 400, 200, 100))]);
    expect(corridor.map((s) => s.holes)).toEqual([[]]);
    expect(intersect([shape(rectangle(200, 200, 500, 500))], corridor)).toEqual([]);
    const wide = intersect([shape(rectangle(50, 50, 800, 800))], corridor);
    expect(wide.map(shapeArea)).toEqual([800 * 800 - 700 * 700 - 50 * 100]);
  });
});
