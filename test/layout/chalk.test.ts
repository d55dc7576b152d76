import { describe, expect, test } from 'vitest';
import type { Layout } from '../../src/layout/Layout.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';

const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));
const room = rectangle(ticks('124 in'), ticks('98 in'));

/** Each mark taken out with a tape: so far along the edge from its named end. */
function tapedOut({ frame, chalk }: Layout) {
  return chalk.lines.flatMap(({ marks }) =>
    marks.map(({ edge, distance, at }) => {
      const { from, to } = [...frame.edges, ...frame.obstacles.flatMap((one) => one.edges)].find(
        ({ id }) => id === edge,
      )!;
      const reach = ([x, y]: readonly [number, number]) =>
        Math.abs(Math.hypot(at[0] - x, at[1] - y) - distance);
      return Math.min(reach(from), reach(to));
    }),
  );
}

describe('chalk lines', () => {
  const { layout } = layOut(job, surfaceOf(room));

  test('lie on the middle of a joint each way', () => {
    const inJoint = layout.pieces.every(({ fullTile }) =>
      ([0, 1] as const).every((axis) => {
        const [low, high] = [fullTile[0]![axis], fullTile[2]![axis]];
        const at = layout.chalk.crossing[axis];
        return at <= low || at >= high;
      }),
    );
    expect(inJoint).toBe(true);
  });

  test('have two marks each, measured from a corner along a wall', () => {
    const ends = layout.chalk.lines.map(({ marks, snappable }) => ({
      snappable,
      on: marks.map(({ edge }) => edge),
    }));
    expect(ends).toEqual([
      { snappable: true, on: ['A-B', 'C-D'] },
      { snappable: true, on: ['D-A', 'B-C'] },
    ]);
    expect(Math.max(...tapedOut(layout))).toBeLessThanOrEqual(1);
  });

  test('lie within a tile of the middle of the longest runs', () => {
    const [x, y] = layout.chalk.crossing;
    expect(Math.abs(x - ticks('62 in'))).toBeLessThanOrEqual(ticks('6 in'));
    expect(Math.abs(y - ticks('49 in'))).toBeLessThanOrEqual(ticks('6 in'));
  });

  test('are checked by the largest 3-4-5 in whole inches that fits', () => {
    const { legs, diagonal } = layout.chalk.check;
    const inch = ticks('1 in');
    expect(legs[0] ** 2 + legs[1] ** 2).toBe(diagonal ** 2);
    expect(legs.every((leg) => leg % inch === 0)).toBe(true);
    // 56 in and 50 in at most to either side: 3 x 16 and 4 x 14 in are tried, 36-48 from 12 in units and up.
    expect(diagonal).toBeGreaterThanOrEqual(5 * 12 * inch);
  });

  test('use no wall that a tape cannot reach', () => {
    const hidden = layOut(job, surfaceOf(room, { walls: { 'C-D': { touch: false } } })).layout.chalk;
    expect(hidden.lines.flatMap(({ marks }) => marks.map(({ edge }) => edge))).not.toContain('C-D');
    expect(hidden.lines.map(({ snappable }) => snappable)).toEqual([false, true]);
  });

  test('keep clear of what stands in the room', () => {
    const column = {
      ...wallFacts({ meets: 'column' }),
      name: 'column',
      shape: {
        kind: 'rectangle',
        along: ticks('20 in'),
        out: ticks('20 in'),
        from: [
          { wall: 'A-B', distance: ticks('40 in') },
          { wall: 'D-A', distance: ticks('52 in') },
        ],
      },
    } as const;
    const { chalk } = layOut(job, surfaceOf(room, { obstacles: [column] })).layout;
    const [x, y] = chalk.crossing;
    const inColumn = x > ticks('52 in') && x < ticks('72 in') && y > ticks('40 in') && y < ticks('60 in');
    expect(inColumn).toBe(false);
    expect(chalk.lines.every(({ snappable }) => snappable)).toBe(true);
  });

  test('keep off a wall that a whole tile starts at, even where no other joint that way has two marks', () => {
    const against = (wall: string, along: string, out: string, from: string, touch: boolean) =>
      ({
        ...wallFacts({ meets: 'cabinet', touch }),
        name: `cabinet at ${wall}`,
        shape: {
          kind: 'rectangle',
          along: ticks(along),
          out: ticks(out),
          from: [
            { wall, distance: 0 },
            { wall: 'A-B', distance: ticks(from) },
          ],
        },
      }) as const;
    const surface = surfaceOf(rectangle(ticks('108 in'), ticks('60 in')), {
      walls: { 'C-D': { seen: 'hidden' } },
      obstacles: [
        against('B-C', '60 in', '30 in', '0 in', true),
        against('D-A', '55 in', '2 in', '5 in', false),
      ],
      start: { across: { kind: 'tile', on: 'A-B' } },
    });
    const { crossing, lines } = layOut(job, surface).layout.chalk;
    expect(crossing[1]).toBeGreaterThan(ticks('6 in'));
    expect(crossing[1]).toBeLessThan(ticks('54 in'));
    expect(lines.map(({ snappable }) => snappable)).toEqual([true, false]);
  });

  test('do not end at the corner of what stands in the room, where the next joint is as good', () => {
    const cabinet = {
      ...wallFacts({ meets: 'cabinet' }),
      name: 'cabinet',
      shape: {
        kind: 'rectangle',
        along: ticks('40 in'),
        out: ticks('49 3/4 in'),
        from: [
          { wall: 'C-D', distance: 0 },
          { wall: 'D-A', distance: 0 },
        ],
      },
    } as const;
    const start = { across: { kind: 'tile', on: 'A-B' } } as const;
    // A joint lies 48 5/32 in off A-B; the cabinet begins at 48 1/4 in.
    const { crossing } = layOut(job, surfaceOf(room, { obstacles: [cabinet], start })).layout.chalk;
    expect(Math.abs(crossing[1] - ticks('48 1/4 in'))).toBeGreaterThan(ticks('1 in'));
  });

  test('lie slantwise where the pattern does, with marks on the walls they hit', () => {
    const { layout: slanted } = layOut(job, surfaceOf(room, { pattern: { turnedDeg: 45 } }));
    expect(slanted.chalk.lines.flatMap(({ marks }) => marks)).toHaveLength(4);
    expect(Math.max(...tapedOut(slanted))).toBeLessThanOrEqual(2);
  });

  test('in millimetres the check goes by 100 mm', () => {
    const mm = (value: number) => value * 320;
    const surface = surfaceOf(rectangle(mm(3000), mm(2400)), { facts: { gap: mm(6), gapMax: mm(12) } });
    const { check } = layOut(jobOf(mm(300), mm(300), mm(3), 'mm'), surface).layout.chalk;
    expect(check.legs.map((leg) => leg % mm(100))).toEqual([0, 0]);
  });

  test.each([
    ['a third', { numerator: 1, denominator: 3 }],
    ['a length', { length: ticks('5 in') }],
  ])('in running bond by %s lie on joints of the courses they name', (_, offset) => {
    const { pieces, chalk } = layOut(job, surfaceOf(room, { pattern: { name: 'running', offset } })).layout;
    const { first, every } = chalk.lines[0]!.courses!;
    const named = pieces.filter(({ row }) => (every > 0 ? (row - first) % every === 0 : row === first));
    const over = named.filter(
      ({ fullTile: [low, , high] }) => low![0] < chalk.crossing[0] && high![0] > chalk.crossing[0],
    );
    expect(named.length).toBeGreaterThan(4);
    expect(over).toEqual([]);
  });
});

/** A room with a wall that leans, and a tub of some length square to it, along it from A-B. */
const leaning = [
  [0, 0],
  [ticks('106 in'), 0],
  [ticks('106 5/8 in'), ticks('61 in')],
  [0, ticks('61 in')],
] as const;
const tubOf = (along: string) =>
  ({
    ...wallFacts({ meets: 'tub' }),
    name: 'tub',
    shape: {
      kind: 'rectangle',
      along: ticks(along),
      out: ticks('30 in'),
      from: [
        { wall: 'B-C', distance: 0 },
        { wall: 'A-B', distance: 0 },
      ],
    },
  }) as const;

describe('a tape that is butted against what stands at a wall aslant', () => {
  // A tub square to a wall that leans stands off the next one by less than a blade is wide at its far end.
  const { frame, chalk } = layOut(job, surfaceOf([...leaning], { obstacles: [tubOf('60 in')] })).layout;
  const { ring } = frame.obstacles[0]!;

  /** Spots all along the sides of the tub, a sixty-fourth of an inch apart at most. */
  const spots = ring.flatMap(([x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!;
    const count = Math.ceil(Math.hypot(u - x, v - y) / ticks('1/64 in'));
    return Array.from({ length: count + 1 }, (_, k) => [
      x + ((u - x) * k) / count,
      y + ((v - y) * k) / count,
    ]);
  });

  test('reads as far as where the tub comes within an inch of the wall', () => {
    const marks = chalk.lines
      .flatMap(({ marks }) => marks)
      .flatMap(({ edge, at, both = [] }) =>
        both.filter(({ end }) => end.startsWith('tub')).map(({ distance }) => ({ edge, at, distance })),
      )
      .filter(({ edge }) => /^[A-Z]-[A-Z]$/.test(edge));
    expect(marks.length).toBeGreaterThan(0);
    for (const { edge, at, distance } of marks) {
      const { from, to } = frame.edges.find(({ id }) => id === edge)!;
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const long = Math.hypot(dx, dy);
      const near = spots
        .map(([x, y]) => [x! - at[0], y! - at[1]] as const)
        .filter(([x, y]) => Math.abs(dx * y - dy * x) / long < ticks('1 in'))
        .map(([x, y]) => Math.abs(dx * x + dy * y) / long);
      expect(Math.abs(distance - Math.min(...near))).toBeLessThanOrEqual(ticks('1/64 in'));
    }
  });
});

describe('a tape along the front of what stands from wall to wall', () => {
  // The room is 61 in wide at this wall, which leans; the tub is as long, so that one end of its front lies in a wall, or just off it.
  test.each(['61 1/4 in', '61 in', '60 1/2 in'])(
    'is butted against the walls beside it, where the tub is %s long: no hook goes between',
    (long) => {
      const { frame, chalk } = layOut(job, surfaceOf([...leaning], { obstacles: [tubOf(long)] })).layout;
      const walls = frame.edges.filter(({ id }) => ['A-B', 'C-D'].includes(id));
      const ends = chalk.lines
        .flatMap(({ marks }) => marks)
        .filter(({ edge }) => edge.startsWith('tub'))
        .flatMap(({ at, both = [] }) => both.map((one) => ({ ...one, at })));
      expect(ends.length).toBeGreaterThan(0);
      for (const { end, distance, at } of ends) {
        const wall = walls.find(({ id }) => id === end);
        // Both walls run along x; the front of the tub is square to them but for its lean, a hundredth.
        const off = Math.abs(at[1] - (wall?.from[1] ?? Infinity));
        expect(Math.abs(distance - off), `${end} of ${long}`).toBeLessThan(ticks('1/64 in'));
      }
    },
  );
});
