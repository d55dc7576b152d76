import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  insetByEdge,
  isSimple,
  outsetByEdge,
  type Point,
  pointInShape,
  type Ring,
  rotateRound,
  shapeArea,
} from '../../src/geometry/index.ts';
import { disagreement, judge, rectangle, roundingAllowance, shape, starRing, toJsts } from './oracle.ts';

const ell: Ring = [
  [0, 0],
  [9000, 0],
  [9000, 4000],
  [5000, 4000],
  [5000, 9000],
  [0, 9000],
];

describe('drawing an outline in by its gaps', () => {
  it('takes each side of a rectangle by its own gap', () => {
    expect(insetByEdge(rectangle(0, 0, 9000, 6000), [100, 200, 0, 400])).toEqual([
      shape(rectangle(400, 100, 8400, 5900)),
    ]);
  });

  it('mitres a re-entrant corner, each line at its own gap', () => {
    const [field] = insetByEdge(ell, [100, 200, 300, 400, 500, 600]);
    expect(field!.outer).toEqual([
      [600, 100],
      [8800, 100],
      [8800, 3700],
      [4600, 3700],
      [4600, 8500],
      [600, 8500],
    ]);
  });

  it('keeps one line an edge in a crooked room, whatever the rounding', () => {
    const crooked: Ring = ell.map(([x, y]): Point => rotateRound([x, y], 0.31));
    expect(insetByEdge(crooked, [100, 200, 300, 400, 500, 600])[0]!.outer).toHaveLength(6);
  });

  it('leaves the outline where no gap is asked for', () => {
    expect(insetByEdge(ell, [0, 0, 0, 0, 0, 0])).toEqual([shape(ell)]);
  });

  it('steps where a straight run changes its gap, as at a doorway', () => {
    const run: Ring = [
      [0, 0],
      [3000, 0],
      [6000, 0],
      [9000, 0],
      [9000, 5000],
      [0, 5000],
    ];
    const [field] = insetByEdge(run, [100, 0, 100, 0, 0, 0]);
    expect(shapeArea(field!)).toBe(9000 * 5000 - 2 * 3000 * 100);
    expect(field!.outer).toHaveLength(8);
  });

  it('leaves no tooth at an edge shorter than its gap', () => {
    const nick: Ring = [
      [0, 0],
      [4000, 0],
      [4003, 2],
      [9000, 2],
      [9000, 5000],
      [0, 5000],
    ];
    const [field, ...rest] = insetByEdge(nick, [500, 500, 500, 500, 500, 500]);
    expect(rest).toEqual([]);
    expect(Math.abs(shapeArea(field!) - 8000 * 3999)).toBeLessThan(2 * 9000);
  });

  it('falls apart where two gaps meet in a neck, and vanishes where nothing is left', () => {
    const dumbbell: Ring = [
      [0, 0],
      [3000, 0],
      [3000, 1400],
      [6000, 1400],
      [6000, 0],
      [9000, 0],
      [9000, 3000],
      [6000, 3000],
      [6000, 1600],
      [3000, 1600],
      [3000, 3000],
      [0, 3000],
    ];
    expect(
      insetByEdge(
        dumbbell,
        dumbbell.map(() => 150),
      ),
    ).toHaveLength(2);
    expect(insetByEdge(rectangle(0, 0, 900, 900), [450, 0, 450, 0])).toEqual([]);
  });

  it('keeps out of a spike of wall by its gap on every side, and cuts the mitre off square', () => {
    const spiked: Ring = [
      [0, 0],
      [9000, 0],
      [9000, 9000],
      [4510, 9000],
      [4500, 4000],
      [4490, 9000],
      [0, 9000],
    ];
    const [field] = insetByEdge(spiked, [0, 0, 0, 300, 300, 0, 0]);
    expect(
      judge.distance(
        toJsts([field!]),
        toJsts([
          shape([
            [4499, 4000],
            [4501, 4000],
            [4500, 4003],
          ]),
        ]),
      ),
    ).toBeGreaterThan(297);
    expect(pointInShape([4500, 3000], field!)).toBe(true);
  });

  it('with one gap all round lies inside the JSTS buffer and misses of it only mitres and steps', () => {
    fc.assert(
      fc.property(starRing(), fc.integer({ min: 1, max: 8000 }), (ring, gap) => {
        const ours = insetByEdge(
          ring,
          ring.map(() => gap),
        );
        const round = judge.buffer(toJsts([shape(ring)]), -gap);
        const allowed = roundingAllowance([shape(ring)]) * 2;
        const beyond =
          ours.length === 0 ? 0 : judge.difference(toJsts(ours), judge.buffer(round, 4)).getArea();
        const missed = disagreement(ours, round) - beyond;
        expect(beyond).toBeLessThanOrEqual(allowed);
        // A mitre takes more than a round corner does, at the longest four gaps by one gap on each side.
        expect(missed).toBeLessThanOrEqual(allowed + ring.length * 6 * gap * gap);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('with random gaps keeps every edge at least its own gap away, along its own length', () => {
    const cases = starRing().chain((ring) =>
      fc.tuple(
        fc.constant(ring),
        fc.array(fc.integer({ min: 0, max: 9000 }), { minLength: ring.length, maxLength: ring.length }),
      ),
    );
    fc.assert(
      fc.property(cases, ([ring, gaps]) => {
        const ours = insetByEdge(ring, gaps);
        for (const { outer } of ours) expect(isSimple(outer)).toBe(true);
        ring.forEach((a, i) => {
          const b = ring[(i + 1) % ring.length]!;
          const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
          const [ux, uy] = [b[0] - a[0], b[1] - a[1]].map((d) => d / Math.hypot(b[0] - a[0], b[1] - a[1]));
          for (const part of [0.02, 0.5, 0.97]) {
            const probe: Point = [middle[0] - uy! * gaps[i]! * part, middle[1] + ux! * gaps[i]! * part];
            if (gaps[i]! > 200) expect(ours.some((s) => pointInShape(probe, s))).toBe(false);
          }
        });
      }),
      { seed: 8, numRuns: 300 },
    );
  });
});

describe('growing an obstacle by its gaps', () => {
  it('moves each side of a rectangle out by its own gap', () => {
    expect(outsetByEdge(rectangle(0, 0, 900, 600), [10, 20, 30, 40])).toEqual(rectangle(-40, -10, 960, 640));
  });

  it('holds the JSTS buffer of a convex ring but for rounding', () => {
    const triangle: Ring = [
      [0, 0],
      [9000, 0],
      [3000, 7000],
    ];
    const grown = outsetByEdge(triangle, [500, 500, 500]);
    const round = judge.buffer(toJsts([shape(triangle)]), 500);
    expect(judge.difference(round, toJsts([shape(grown)])).getArea()).toBeLessThan(30000);
    expect(grown).toHaveLength(3);
  });

  it('fills a hollow that closes up', () => {
    const cup: Ring = [
      [0, 0],
      [900, 0],
      [900, 900],
      [600, 900],
      [600, 300],
      [300, 300],
      [300, 900],
      [0, 900],
    ];
    expect(
      outsetByEdge(
        cup,
        cup.map(() => 200),
      ),
    ).toEqual(rectangle(-200, -200, 1300, 1300));
  });
});
