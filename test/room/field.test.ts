import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  distancePointSegment,
  type Point,
  pointInRing,
  pointInShape,
  ringArea,
  rotateRound,
  shapeArea,
} from '../../src/geometry/index.ts';
import type { DoorSide, DoorwaySpec, ObstacleSpec, SurfaceSpec } from '../../src/job/Job.ts';
import { makeField } from '../../src/room/makeField.ts';
import type { Room, RoomEdge } from '../../src/room/Room.ts';
import {
  circle,
  doorway,
  inch,
  obstacle,
  plain,
  post,
  rectangle,
  roomOf,
  surface,
  undercut,
} from './support/surface.ts';

const slip = fc.integer({ min: -inch(1), max: inch(1) });
const side: fc.Arbitrary<DoorSide> = fc.constantFrom(
  plain,
  undercut(1 / 2),
  undercut(5 / 8),
  post(1.5, 1),
  post(1.5, 3.5),
);
const door: fc.Arbitrary<DoorwaySpec> = fc
  .record({
    at: fc.constantFrom(['D-E', 'D'], ['F-A', 'A'], ['B-C', 'B'], ['A-B', 'B']),
    from: fc.integer({ min: 2, max: 12 }),
    left: side,
    right: side,
    doorLine: fc.constantFrom(0, inch(2), inch(2.375)),
  })
  .map(({ at, from, ...sides }) => {
    const [wall = '', fromCorner = ''] = at;
    return doorway({ ...sides, wall, fromCorner, from: inch(from), clear: inch(28) });
  });
const things: fc.Arbitrary<readonly ObstacleSpec[]> = fc
  .record({
    x: fc.integer({ min: 12, max: 70 }),
    y: fc.integer({ min: 12, max: 40 }),
    gap: fc.constantFrom(1 / 8, 1 / 4, 1 / 2),
  })
  .map(({ x, y, gap }) => [
    obstacle('island', rectangle(22, 14, ['A-B', y], ['F-A', x]), gap),
    obstacle('flange', circle(4, ['A-B', 10], ['B-C', 20]), gap),
    obstacle('tub', rectangle(30, 20, ['E-F', 0], ['F-A', 0]), gap),
  ]);

/** An L of 180 × 108 with crooked walls, a doorway and three obstacles. */
const crooked = fc
  .record({ slips: fc.array(slip, { minLength: 6, maxLength: 6 }), door, things })
  .map((made) => {
    const lengths = [180, 60, 84, 48, 96, 108].map((inches, i) => inch(inches) + made.slips[i]!);
    const ids = ['A-B', 'B-C', 'C-D', 'D-E', 'E-F', 'F-A'];
    return surface({
      walls: Object.fromEntries(ids.map((id, i) => [id, lengths[i]!])),
      angles: { D: 270 },
      doorways: [made.door],
      obstacles: made.things,
      facts: { 'B-C': { gap: inch(1 / 2) } },
    });
  });

/** The same room, its corners counted from another. */
function renumbered(spec: SurfaceSpec, first: number): SurfaceSpec {
  const turn = <T>(list: readonly T[]) => [...list.slice(first), ...list.slice(0, first)];
  return { ...spec, corners: turn(spec.corners), walls: turn(spec.walls) };
}

/** The same room seen in a mirror, so that its corners are walked the other way and doorways change hands. */
function mirrored(spec: SurfaceSpec): SurfaceSpec {
  return {
    ...spec,
    corners: [...spec.corners].reverse(),
    // Reversed corners A F E D C B are joined by the walls A-F, F-E …, each walked from its other end.
    walls: [...spec.walls.slice(0, -1)]
      .reverse()
      .concat(spec.walls.slice(-1))
      .map((wall) => ({ ...wall, from: wall.to, to: wall.from })),
    doorways: spec.doorways.map((one) => ({ ...one, left: one.right, right: one.left })),
  };
}

const area = (room: Room) => room.field.reduce((sum, shape) => sum + shapeArea(shape), 0);
/** One tick along every edge that was rounded, here and there. */
const slack = (room: Room) => 4 * room.adjustment.perimeter;

const edgesOf = (room: Room) => [...room.edges, ...room.obstacles.flatMap((one) => one.edges)];
const clearance = (room: Room, p: Point) => {
  const straight = edgesOf(room).map(({ from, to, gap }) => distancePointSegment(p, from, to) - gap);
  const round = room.obstacles.flatMap(({ circle }) =>
    circle ? [Math.hypot(p[0] - circle.centre[0], p[1] - circle.centre[1]) - circle.clearRadius] : [],
  );
  return Math.min(...straight, ...round);
};

describe('the field of any room', () => {
  const spots = fc.array(
    fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
    {
      minLength: 60,
      maxLength: 60,
    },
  );

  it('is where no edge is nearer than its gap, and nowhere else', () => {
    fc.assert(
      fc.property(crooked, spots, (spec, where) => {
        const room = roomOf(spec);
        // Points over the whole room, and more of them beside its edges, where it is decided.
        const beside = edgesOf(room).flatMap(({ from, to }, i) => {
          const [t, off] = where[i % where.length]!;
          const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
          const far = ((off - 0.3) * inch(1)) / Math.hypot(dx, dy);
          return [[from[0] + t * dx - far * dy, from[1] + t * dy + far * dx] as Point];
        });
        const all = where.map(([x, y]): Point => [inch(x * 184 - 2), inch(y * 112 - 2)]);
        for (const spot of [...all, ...beside]) {
          const inside =
            pointInRing(spot, room.outline) && !room.obstacles.some((one) => pointInRing(spot, one.ring));
          const clear = clearance(room, spot);
          if (!inside || clear < -3)
            expect(room.field.some((shape) => pointInShape(spot, shape))).toBe(false);
          // Mitres keep up to 1/2 in · (√2 − 1) more away from a corner that sticks out.
          else if (clear > inch(0.21))
            expect(room.field.some((shape) => pointInShape(spot, shape))).toBe(true);
        }
      }),
      { seed: 8, numRuns: 60 },
    );
  });

  it('grows by the doorway: clear width and tucks by the depth, and what lies behind posts', () => {
    fc.assert(
      fc.property(crooked, (spec) => {
        const { outline, corners, adjustment } = roomOf(spec);
        const { clear, doorLine, left, right } = spec.doorways[0]!;
        const beside = (one: DoorSide) => {
          if (one.kind === 'undercut') return one.tuck * doorLine;
          return one.kind === 'post' ? one.width * Math.max(doorLine - one.depth, 0) : 0;
        };
        const expected = doorLine === 0 ? 0 : clear * doorLine + beside(left) + beside(right);
        expect(Math.abs(ringArea(outline) - ringArea(corners) - expected)).toBeLessThan(
          4 * adjustment.perimeter,
        );
      }),
      { seed: 9, numRuns: 60 },
    );
  });

  it('is the same whichever corner is the first', () => {
    fc.assert(
      fc.property(crooked, fc.integer({ min: 1, max: 5 }), (spec, first) => {
        const [one, other] = [roomOf(spec), roomOf(renumbered(spec, first))];
        expect(Math.abs(area(one) - area(other))).toBeLessThan(slack(one));
        expect(new Set(other.edges.map(({ id }) => id))).toEqual(new Set(one.edges.map(({ id }) => id)));
      }),
      { seed: 10, numRuns: 40 },
    );
  });

  it('is the same in a mirror', () => {
    fc.assert(
      fc.property(crooked, (spec) => {
        const [one, other] = [roomOf(spec), roomOf(mirrored(spec))];
        expect(Math.abs(area(one) - area(other))).toBeLessThan(slack(one));
        expect(other.field.length).toBe(one.field.length);
      }),
      { seed: 11, numRuns: 40 },
    );
  });
});

describe('a post whose gap ends just on the gap of the door line', () => {
  const door = doorway({ left: post(1.5, 3.5), right: post(1.5, 3.5), doorLine: inch(3.9375) });
  const line = { ...door.line, gap: inch(3 / 16) };
  const walls = { 'A-B': inch(98), 'B-C': inch(61), 'C-D': inch(98), 'D-A': inch(61) };
  const { outline, edges } = roomOf(surface({ walls, doorways: [{ ...door, line }] }));

  it.each(Array.from({ length: 24 }, (_, i) => [15 * i + 1]))(
    'leaves no spike behind it, the room turned by %i°',
    (degrees) => {
      const turned = (point: Point) => rotateRound(point, (degrees * Math.PI) / 180);
      const moved = edges.map(
        (edge): RoomEdge => ({ ...edge, from: turned(edge.from), to: turned(edge.to) }),
      );
      const [field, ...others] = makeField(outline.map(turned), moved, []);
      expect(others).toEqual([]);
      expect(field!.outer).toHaveLength(makeField(outline, edges, [])[0]!.outer.length);
    },
  );
});
