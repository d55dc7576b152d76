import { describe, expect, it } from 'vitest';
import { ringArea, shapeArea } from '../../src/geometry/index.ts';
import {
  box,
  circle,
  doorway,
  inch,
  obstacle,
  plain,
  points,
  post,
  rectangle,
  roomOf,
  undercut,
} from './support/surface.ts';

const squareInches = (area: number) => area / 8128 ** 2;
const fieldArea = (room: ReturnType<typeof roomOf>) =>
  squareInches(room.field.reduce((sum, shape) => sum + shapeArea(shape), 0));

describe('a room with square corners', () => {
  it('stands with its first corner at the origin and its first wall along x', () => {
    const room = roomOf({ walls: box(96, 60) });
    expect(room.corners).toEqual(points([0, 0], [96, 0], [96, 60], [0, 60]));
    expect(room.outline).toEqual(room.corners);
    expect(room.edges.map(({ id }) => id)).toEqual(['A-B', 'B-C', 'C-D', 'D-A']);
    expect(fieldArea(room)).toBe(95.5 * 59.5);
  });

  it('may be L-shaped, where its corners say so', () => {
    const walls = {
      'A-B': '15 ft',
      'B-C': '5 ft',
      'C-D': '7 ft',
      'D-E': '4 ft',
      'E-F': '8 ft',
      'F-A': '9 ft',
    };
    const room = roomOf({ walls, angles: { D: 270 } });
    expect(room.corners).toEqual(points([0, 0], [180, 0], [180, 60], [96, 60], [96, 108], [0, 108]));
    // 179.5 × 59.5 and the leg's 95.5 × 48 above it.
    expect(fieldArea(room)).toBe(179.5 * 59.5 + 95.5 * 48);
  });

  it('may have a corner clipped at 45 degrees', () => {
    // A 4 ft wall at 45 degrees in a corner of 16 ft × 18 ft takes 4 sq ft of the floor: its legs are 33 15/16 in.
    const leg = 48 / Math.SQRT2;
    const walls = {
      'A-B': inch(192),
      'B-C': inch(216 - leg),
      'C-D': inch(48),
      'D-E': inch(192 - leg),
      'E-A': inch(216),
    };
    const room = roomOf({ walls, angles: { C: 135, D: 135 } });
    expect(squareInches(ringArea(room.outline)) / 144).toBeCloseTo(288 - 4, 4);
    expect(room.corners[3]).toEqual([inch(192 - leg), inch(216)]);
  });

  it('measures what the plan says, less a hearth and a clipped corner', () => {
    // 16 ft × 18 ft less 4 sq ft at the corner and 5 1/4 at a hearth of 18 × 42 in, centred on a short wall: 278 3/4.
    const leg = 48 / Math.SQRT2;
    const walls = {
      'A-B': inch(192),
      'B-C': inch(216 - leg),
      'C-D': inch(48),
      'D-E': inch(192 - leg),
      'E-A': inch(216),
    };
    const hearth = obstacle('hearth', rectangle(42, 18, ['A-B', 0], ['E-A', 75]), 0);
    const none = Object.fromEntries(Object.keys(walls).map((id) => [id, { gap: 0 }]));
    const room = roomOf({ walls, angles: { C: 135, D: 135 }, obstacles: [hearth], facts: none });
    expect(fieldArea(room) / 144).toBeCloseTo(278.75, 3);
  });

  it('may be a kitchen with a corridor that goes on along one wall', () => {
    const mm = (millimetres: number) => 320 * millimetres;
    const walls = {
      'A-B': mm(7200),
      'B-C': mm(1200),
      'C-D': mm(3600),
      'D-E': mm(1800),
      'E-F': mm(3600),
      'F-A': mm(3000),
    };
    const facts = Object.fromEntries(Object.keys(walls).map((id) => [id, { gap: mm(6) }]));
    const room = roomOf({ walls, angles: { D: 270 }, facts });
    const squareMillimetres = room.field.reduce((sum, shape) => sum + shapeArea(shape), 0) / 320 ** 2;
    expect(squareMillimetres).toBe(7188 * 1188 + 3588 * 1800);
  });

  it('draws each edge in by its own gap', () => {
    const facts = { 'B-C': { gap: inch(1 / 2) }, 'D-A': { gap: 0 } };
    expect(fieldArea(roomOf({ walls: box(96, 60), facts }))).toBe(95.5 * 59.5);
  });
});

describe('a doorway', () => {
  const room = roomOf({
    walls: box(100, 60),
    doorways: [doorway({ left: undercut(1 / 2), right: post(1.5, 1.5) })],
  });

  it('is a recess down to the closed-door line, wider under casing, narrower at a post, wide again behind it', () => {
    // The wall runs down the y axis: facing the door, the left hand points to A. By hand from the figures.
    expect(room.outline).toEqual(
      points(
        [0, 0],
        [100, 0],
        [100, 60],
        [0, 60],
        [0, 51],
        [-1.5, 51],
        [-1.5, 52.5],
        [-2.375, 52.5],
        [-2.375, 20.5],
        [0, 20.5],
      ),
    );
  });

  it('names its edges and the pieces of its wall', () => {
    const ids = 'A-B B-C C-D D-A hall:right hall:right.2 hall:right.3 hall:line hall:left D-A.2';
    expect(room.edges.map(({ id }) => id).join(' ')).toBe(ids);
    expect(room.edges.map(({ name }) => name).filter((name) => name === 'hall')).toHaveLength(5);
    expect(room.edges.at(-1)).toMatchObject({ name: 'D-A', meets: 'wall' });
    expect(room.edges[8]).toMatchObject({ meets: 'casing', seen: 'hidden', gap: inch(1 / 4) });
  });

  it('says where its line and its clear opening end, left to right as seen from the room', () => {
    expect(room.openings).toEqual([
      {
        name: 'hall',
        wall: 'D-A',
        line: points([-2.375, 20.5], [-2.375, 52.5]),
        face: points([0, 21], [0, 51]),
        beyond: 'wood',
        onlyExit: true,
      },
    ]);
  });

  it('lets the field reach to the line and under the casing less the gaps', () => {
    // Clear width plus tuck less a gap at each side; the line of this doorway has no gap. Behind the post the field
    // keeps its gap to the post, so it is 7/8 − 1/4 deep there and as wide as the post.
    const recess = (30 + 0.5 - 0.5) * (2.375 + 0.25) + 1.5 * (0.875 - 0.25);
    expect(fieldArea(room)).toBeCloseTo(99.5 * 59.5 + recess, 3);
  });

  it('is measured from either corner of its wall', () => {
    const other = doorway({ left: undercut(1 / 2), right: post(1.5, 1.5), fromCorner: 'A', from: inch(21) });
    expect(roomOf({ walls: box(100, 60), doorways: [other] }).outline).toEqual(room.outline);
  });

  it('has the post on the other hand when its sides change places', () => {
    const swapped = doorway({ left: post(1.5, 1.5), right: undercut(1 / 2) });
    const { outline, edges } = roomOf({ walls: box(100, 60), doorways: [swapped] });
    expect(outline.slice(4)).toEqual(
      points([0, 51.5], [-2.375, 51.5], [-2.375, 19.5], [-1.5, 19.5], [-1.5, 21], [0, 21]),
    );
    const ids = 'hall:right hall:line hall:left.3 hall:left.2 hall:left D-A.2';
    expect(
      edges
        .slice(4)
        .map(({ id }) => id)
        .join(' '),
    ).toBe(ids);
  });

  it('has straight sides where a post is as deep as the line', () => {
    const deep = doorway({ left: post(1.5, 3.5), right: plain });
    const { outline } = roomOf({ walls: box(100, 60), doorways: [deep] });
    expect(outline.slice(4)).toEqual(points([0, 51], [-2.375, 51], [-2.375, 21], [0, 21]));
  });

  it('without a recess makes its stretch of the wall the line', () => {
    const flush = doorway({ doorLine: 0, left: undercut(1 / 2) });
    const { outline, edges, openings } = roomOf({ walls: box(100, 60), doorways: [flush] });
    expect(outline.slice(4)).toEqual(points([0, 51], [0, 21]));
    expect(edges.slice(3).map(({ id }) => id)).toEqual(['D-A', 'hall:line', 'D-A.2']);
    expect(openings[0]!.line).toEqual(openings[0]!.face);
  });

  it('may be as wide as its wall, which may read a little short', () => {
    const whole = doorway({ from: 0, clear: inch(60 + 1 / 8) });
    const { edges } = roomOf({ walls: box(100, 60), doorways: [whole] });
    expect(edges.slice(3).map(({ id }) => id)).toEqual(['hall:right', 'hall:line', 'hall:left']);
  });

  it('may share its wall with another', () => {
    const other = doorway({ name: 'yard', from: inch(42), clear: inch(12) });
    const { edges } = roomOf({ walls: box(100, 60), doorways: [other, doorway()] });
    const ids = 'D-A hall:right hall:line hall:left D-A.2 yard:right yard:line yard:left D-A.3';
    expect(
      edges
        .slice(3)
        .map(({ id }) => id)
        .join(' '),
    ).toBe(ids);
  });
});

describe('an obstacle', () => {
  it('that stands free is a hole in the field, grown by its gap', () => {
    const island = obstacle('island', rectangle(24, 12, ['A-B', 20], ['B-C', 30]));
    const room = roomOf({ walls: box(100, 60), obstacles: [island] });
    expect(room.obstacles[0]!.ring).toEqual(points([70, 20], [70, 32], [46, 32], [46, 20]));
    expect(room.obstacles[0]!.edges.map(({ id }) => id)).toEqual([
      'island:1',
      'island:2',
      'island:3',
      'island:4',
    ]);
    expect(room.field[0]!.holes).toHaveLength(1);
    expect(fieldArea(room)).toBe(99.5 * 59.5 - 24.5 * 12.5);
  });

  it('against two walls takes the corner', () => {
    const cabinet = obstacle('cabinet', rectangle(24, 12, ['D-A', 0], ['A-B', 0]));
    const room = roomOf({ walls: box(100, 60), obstacles: [cabinet] });
    expect(room.obstacles[0]!.ring).toEqual(points([0, 0], [12, 0], [12, 24], [0, 24]));
    expect(fieldArea(room)).toBe(99.5 * 59.5 - 12 * 24);
  });

  it('may be round: centre from two faces, radius and clear radius true', () => {
    // The flange of a 7 in hole cut 1/4 in larger all round, 15 in from the side wall and 12 in from the back wall.
    const flange = obstacle('flange', circle(7, ['D-A', 15], ['A-B', 12]));
    const room = roomOf({ walls: box(60, 96), obstacles: [flange] });
    expect(room.obstacles[0]!.circle).toEqual({
      centre: [inch(15), inch(12)],
      radius: inch(3.5),
      clearRadius: inch(3.75),
    });
    expect(fieldArea(room)).toBeCloseTo(59.5 * 95.5 - Math.PI * 3.75 ** 2, 2);
  });

  it('may be a polygon, its points given from the same two walls in any sense of turning', () => {
    const shape = {
      kind: 'polygon',
      walls: ['A-B', 'D-A'],
      points: points([10, 10], [10, 20], [16, 10]),
    } as const;
    const { ring } = roomOf({ walls: box(100, 60), obstacles: [obstacle('stair', shape)] }).obstacles[0]!;
    expect(squareInches(ringArea(ring))).toBe(30);
    expect(new Set(ring.map(String))).toEqual(new Set(points([10, 10], [20, 10], [10, 16]).map(String)));
  });

  it.each([
    ['one way round', points([10, 10], [50, 10], [50, 30], [10, 30]), [0, inch(10), 0, inch(-2)]],
    ['the other way', points([10, 10], [10, 30], [50, 30], [50, 10]), [inch(-2), 0, inch(10), 0]],
  ])('may have sides that bulge or are hollow, its corners told %s', (_, corners, rises) => {
    const shape = { kind: 'polygon', walls: ['D-A', 'A-B'], points: corners, rises } as const;
    const room = roomOf({ walls: box(100, 60), obstacles: [obstacle('island', shape)] });
    const { ring, edges } = room.obstacles[0]!;
    // Half a circle of radius 10 in on one end; out of the other a segment of chord 20 in and rise 2 in, of radius c²/8h + h/2 = 26 in
    // and area r²·acos((r − h)/r) − (r − h)·√(2rh − h²), as circular segments stand in Machinery's Handbook (from memory).
    const hollow = 26 ** 2 * Math.acos(24 / 26) - 24 * Math.sqrt(4 * 26 - 4);
    expect(Math.abs(squareInches(ringArea(ring)) - (40 * 20 + 50 * Math.PI - hollow))).toBeLessThan(0.4);
    const sides = edges.map(({ id, arc }) => `${id.replace(/\.\d+$/, '')} ${arc?.sign ?? 0}`);
    // As a curved wall: 1 where it bulges out of the room, -1 into it.
    expect([...new Set(sides)]).toEqual(['island:1 0', 'island:2 -1', 'island:3 0', 'island:4 1']);
  });

  it('may read a little into another', () => {
    const pair = [
      obstacle('tub', rectangle(30, 20, ['A-B', 0], ['D-A', 0])),
      obstacle('shelf', rectangle(30, 10, ['A-B', 0], ['D-A', 29.5])),
    ];
    const room = roomOf({ walls: box(100, 60), obstacles: pair });
    expect(fieldArea(room)).toBe(99.5 * 59.5 - 30 * 20 - 29.5 * 10);
  });

  it('may cut the field in two', () => {
    const counter = obstacle('counter', rectangle(4, 60, ['A-B', 0], ['D-A', 40]));
    expect(roomOf({ walls: box(100, 60), obstacles: [counter] }).field).toHaveLength(2);
  });
});
