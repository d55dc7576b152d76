import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bounds,
  circleRing,
  convexHull,
  distancePointSegment,
  distanceShapes,
  isConvex,
  isSimple,
  lineThroughShape,
  mirrorX,
  narrowness,
  type Point,
  pointInShape,
  poleOfInaccessibility,
  type Ring,
  ringArea,
  rotate,
  rotateRound,
  segmentIntersection,
  selfCrossings,
  shapeArea,
  side,
  subtract,
  transformRing,
  whereInRing,
} from '../../src/geometry/index.ts';
import { convexRing, judge, rectangle, shape, starRing, toJsts } from './oracle.ts';

const framed = subtract([shape(rectangle(0, 0, 9000, 6000))], [shape(rectangle(2000, 2000, 3000, 1000))])[0]!;
const within = (size: number) =>
  fc.tuple(fc.integer({ min: -size, max: size }), fc.integer({ min: -size, max: size }));

describe('which side of a line a point lies on', () => {
  it('is exact to one tick over 50 m', () => {
    const far: Point = [16000000, 15999999];
    expect(side([0, 0], far, [8000000, 8000000])).toBe(8000000);
    expect(side([0, 0], [16000000, 16000000], [7999999, 7999999])).toBe(0);
    expect(side([0, 0], [16000000, 15999998], [8000000, 7999999])).toBe(0);
  });
});

describe('a ring', () => {
  it('has the area JSTS gives it, signed by its sense', () => {
    fc.assert(
      fc.property(starRing(), (ring) => {
        expect(ringArea(ring)).toBe(toJsts([shape(ring)]).getArea());
        expect(ringArea([...ring].reverse())).toBe(-ringArea(ring));
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  it('is simple exactly where JSTS calls it valid', () => {
    const loose = fc.array(within(4), { minLength: 3, maxLength: 6 });
    const told = { simple: 0, crossed: 0 };
    fc.assert(
      fc.property(loose, (points) => {
        fc.pre(points.every((p, i) => p.join() !== points[(i + 1) % points.length]!.join()));
        const valid = judge.valid(toJsts([shape(points)]));
        told[valid ? 'simple' : 'crossed']++;
        expect(isSimple(points)).toBe(valid);
      }),
      { seed: 12, numRuns: 1000 },
    );
    expect(Math.min(told.simple, told.crossed)).toBeGreaterThan(100);
  });

  it('names the two edges that cross', () => {
    const wall: Ring = [
      [0, 0],
      [900, 0],
      [900, 900],
      [500, -100],
      [0, 900],
    ];
    expect(selfCrossings(wall)).toEqual([
      { i: 0, j: 2 },
      { i: 0, j: 3 },
    ]);
  });

  it('that doubles back on itself is not simple', () => {
    expect(
      isSimple([
        [0, 0],
        [900, 0],
        [400, 0],
        [400, 500],
      ]),
    ).toBe(false);
  });

  it('is convex where its hull is the ring itself; a star that always turns left is not', () => {
    fc.assert(
      fc.property(starRing(), (ring) => {
        expect(isConvex(ring)).toBe(convexHull(ring).length === ring.length);
      }),
      { seed: 13, numRuns: 300 },
    );
    const star = [0, 2, 4, 1, 3].map((k): Point => rotateRound([9000, 0], (k * 2 * Math.PI) / 5));
    expect(isConvex(star)).toBe(false);
  });

  it('keeps its area, its first point and its sense when mirrored or turned a quarter', () => {
    fc.assert(
      fc.property(starRing(), (ring) => {
        const mirrored = transformRing(ring, mirrorX);
        expect(ringArea(mirrored)).toBe(ringArea(ring));
        expect(mirrored[0]).toEqual(mirrorX(ring[0]!));
        expect(ringArea(transformRing(ring, (p) => rotate(p, Math.PI / 2)))).toBe(ringArea(ring));
      }),
      { seed: 14, numRuns: 100 },
    );
  });
});

describe('a point in a shape', () => {
  it('is on the edge exactly where JSTS finds a distance of 0 from it, and inside where it is in the area', () => {
    const grid = fc.tuple(fc.array(within(3), { minLength: 3, maxLength: 5 }), within(4));
    fc.assert(
      fc.property(grid, ([ring, point]) => {
        fc.pre(isSimple(ring));
        const away = Math.min(
          ...ring.map((a, i) => distancePointSegment(point, a, ring[(i + 1) % ring.length]!)),
        );
        const dot = toJsts([shape([point, [point[0] + 1e-7, point[1]], [point[0], point[1] + 1e-7]])]);
        const inArea = judge.distance(dot, toJsts([shape(ring)])) === 0;
        expect(whereInRing(point, ring)).toBe(away === 0 ? 'on' : inArea ? 'inside' : 'outside');
      }),
      { seed: 15, numRuns: 1000 },
    );
  });

  it('counts the edge of a hole as inside, the hole itself as outside', () => {
    expect(pointInShape([2000, 2500], framed)).toBe(true);
    expect(pointInShape([3000, 2500], framed)).toBe(false);
  });
});

describe('distances', () => {
  it('between shapes are those of JSTS', () => {
    fc.assert(
      fc.property(starRing(30000), starRing(30000), (p, q) => {
        const [a, b] = [shape(p), shape(q)];
        expect(distanceShapes(a, b)).toBeCloseTo(judge.distance(toJsts([a]), toJsts([b])), 6);
      }),
      { seed: 16, numRuns: 300 },
    );
  });

  it('from a shape in a hole are taken to the edge of the hole', () => {
    expect(distanceShapes(framed, shape(rectangle(2300, 2400, 100, 100)))).toBe(300);
  });
});

describe('two segments', () => {
  it('cross where both lines do', () => {
    expect(segmentIntersection([0, 0], [900, 300], [0, 300], [900, 0])).toEqual([450, 150]);
    expect(segmentIntersection([0, 0], [900, 0], [900, 0], [900, 50])).toEqual([900, 0]);
    expect(segmentIntersection([0, 0], [900, 0], [0, 10], [900, 10])).toBeNull();
    expect(segmentIntersection([0, 0], [400, 0], [500, -10], [500, 10])).toBeNull();
  });
});

describe('a line through a shape', () => {
  const cases = [
    [
      'through a hole',
      [0, 2500],
      [1, 0],
      [
        [0, 2000],
        [5000, 9000],
      ],
    ],
    ['along the edge of a hole', [0, 3000], [1, 0], [[0, 9000]]],
    ['along the outer edge', [500, 6000], [1, 0], [[-500, 8500]]],
    ['past the shape', [0, 6001], [1, 0], []],
    ['on a corner only', [0, 6000], [1, -1], [[0, 6000]]],
    ['touching one corner from outside', [0, 0], [1, -1], []],
    ['with another measure of length', [0, 1000], [9000, 0], [[0, 1]]],
  ] as const;

  it.each(cases)('%s', (_, p, dir, spans) => {
    const expected = spans.map(([from, to]) => ({ from, to }));
    const whole = { outer: framed.outer, holes: p[1] === 6000 && dir[1] === -1 ? [] : framed.holes };
    expect(lineThroughShape(whole, p, dir)).toEqual(expected);
  });

  it('is in the shape as long as JSTS finds a hair-thin strip along it to be', () => {
    fc.assert(
      fc.property(
        starRing(),
        within(60000),
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: -50, max: 50 }),
        (ring, p, dx, dy) => {
          const unit = Math.hypot(dx, dy);
          const reach = 400000 / unit;
          const ours = lineThroughShape(shape(ring), p, [dx, dy]).reduce(
            (sum, s) => sum + (s.to - s.from) * unit,
            0,
          );
          const [nx, ny] = [-dy / unit, dx / unit];
          const strip = shape([
            [p[0] - dx * reach - nx, p[1] - dy * reach - ny],
            [p[0] + dx * reach - nx, p[1] + dy * reach - ny],
            [p[0] + dx * reach + nx, p[1] + dy * reach + ny],
            [p[0] - dx * reach + nx, p[1] - dy * reach + ny],
          ]);
          expect(
            Math.abs(judge.intersection(toJsts([strip]), toJsts([shape(ring)])).getArea() / 2 - ours),
          ).toBeLessThan(50);
        },
      ),
      { seed: 17, numRuns: 200 },
    );
  });
});

describe('a circle as a ring', () => {
  it.each([1, 500, 28448, 200000])(
    'of radius %i holds the area of the circle and stays within a tick and a half of it',
    (radius) => {
      const ring = circleRing([1000, -500], radius);
      const off = ring.map(([x, y]) => Math.abs(Math.hypot(x - 1000, y + 500) - radius));
      expect(Math.max(...off)).toBeLessThanOrEqual(1.75);
      expect(Math.abs(ringArea(ring) - Math.PI * radius ** 2)).toBeLessThan(Math.max(4, 2 * radius));
      expect(ring.length % 4).toBe(0);
    },
  );

  it('takes fewer points where more is allowed', () => {
    expect(circleRing([0, 0], 28448, 16).length).toBeLessThan(circleRing([0, 0], 28448).length / 3);
  });
});

describe('the narrowness of a ring', () => {
  it('is the least width over all directions, tried one by one', () => {
    fc.assert(
      fc.property(starRing(9000), (ring) => {
        const widths = Array.from({ length: 3600 }, (_, k) => {
          const across = ring.map((p) => rotate(p, (k * Math.PI) / 3600)[0]);
          return Math.max(...across) - Math.min(...across);
        });
        const least = Math.min(...widths);
        expect(narrowness(ring)).toBeLessThanOrEqual(least + 1e-6);
        expect(narrowness(ring)).toBeGreaterThan(least - 20);
      }),
      { seed: 18, numRuns: 60 },
    );
  });

  it('of a convex ring does not depend on where it begins', () => {
    fc.assert(
      fc.property(convexRing(), (ring) => {
        expect(narrowness([...ring.slice(2), ...ring.slice(0, 2)])).toBeCloseTo(narrowness(ring), 6);
      }),
      { seed: 19, numRuns: 100 },
    );
  });
});

describe('the place for a label', () => {
  const depthOf = (point: Point, ring: Ring) =>
    Math.min(...ring.map((a, i) => distancePointSegment(point, a, ring[(i + 1) % ring.length]!)));

  it('is deeper inside than any point of a fine grid, within the precision asked for', () => {
    const steps = Array.from({ length: 61 }, (_, k) => k / 60);
    fc.assert(
      fc.property(starRing(), (ring) => {
        const label = poleOfInaccessibility(shape(ring), 50);
        const { minX, minY, maxX, maxY } = bounds(ring);
        const grid = steps.flatMap((u) =>
          steps.map((v): Point => [minX + u * (maxX - minX), minY + v * (maxY - minY)]),
        );
        const inside = grid.filter((p) => whereInRing(p, ring) === 'inside');
        expect(whereInRing(label, ring)).toBe('inside');
        expect(Math.max(...inside.map((p) => depthOf(p, ring)))).toBeLessThanOrEqual(
          depthOf(label, ring) + 51,
        );
      }),
      { seed: 20, numRuns: 40 },
    );
  });

  it('keeps out of holes', () => {
    const [x, y] = poleOfInaccessibility(framed, 10);
    expect(pointInShape([x, y], framed)).toBe(true);
    expect(x).toBeGreaterThan(5000);
  });

  it('is found in a strip that is a thousand times as long as wide', () => {
    expect(poleOfInaccessibility(shape(rectangle(0, 0, 1000000, 1000)), 5)[1]).toBeCloseTo(500, -1);
    expect(shapeArea(framed)).toBe(51000000);
  });
});
