import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distancePointSegment, type Point, pointInRing } from '../../src/geometry/index.ts';
import { chalkGround } from '../../src/layout/chalk/chalkGround.ts';
import { laterLines } from '../../src/layout/chalk/laterLines.ts';
import type { ChalkLine, Layout } from '../../src/layout/Layout.ts';
import { sawNearest } from '../../src/measure/index.ts';
import { layOut } from '../support/layOut.ts';
import { randomRoom } from '../support/randomRoom.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const IN = 8128;
/** Spread of a reading that the trials are made with: 1/32 in. */
const READING = IN / 32;
const TRIALS = process.env.LONG === '1' ? 1000 : 100;

const rooms = fc.sample(randomRoom, { seed: 20270415, numRuns: 40 }).map((room) => {
  const { layout, room: made } = layOut(room.job, room.surface);
  return { ...room, layout, walls: new Map(made.adjustment.readings.map(({ id, used }) => [id, used])) };
});
const named = rooms.map((room, i) => [`${i} ${room.kind} ${room.surface.pattern.name}`, room] as const);

const linesOf = ({ chalk }: Layout) => [...chalk.lines, ...(chalk.further ?? [])];
const edgesOf = ({ frame }: Layout) => [...frame.edges, ...frame.obstacles.flatMap(({ edges }) => edges)];
const edgeOf = (layout: Layout, id: string) => edgesOf(layout).find((edge) => edge.id === id)!;
const apart = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]);

describe.each(named)('the marks of %s', (_, { layout, walls }) => {
  const marks = linesOf(layout).flatMap((line) => line.marks);

  test('lie on a face that a tape reaches, and in nothing that stands there', () => {
    const off = marks.filter(({ edge, at }) => {
      const { touch, from, to } = edgeOf(layout, edge);
      const inside = layout.frame.obstacles.some(
        ({ ring }) =>
          pointInRing(at, ring) &&
          ring.every((p, i) => distancePointSegment(at, p, ring[(i + 1) % ring.length]!) > 2),
      );
      return !touch || distancePointSegment(at, from, to) > 2 || inside;
    });
    expect(off).toEqual([]);
  });

  test('stand at least 24 in apart where a line is snapped through them', () => {
    const near = linesOf(layout).filter(
      ({ snappable, marks: [one, other] }) =>
        snappable && !(one && other && apart(one.at, other.at) >= 24 * IN),
    );
    expect(near).toEqual([]);
  });

  test('from both corners add to the wall as used', () => {
    const open = marks.flatMap(({ edge, both }) => {
      const used = walls.get(edgeOf(layout, edge).name);
      const isCorner = both?.every(({ end }) => /^[A-Z]$/.test(end));
      return both && isCorner && both[0].distance + both[1].distance !== used ? [[edge, both, used]] : [];
    });
    expect(open).toEqual([]);
  });

  test('of one wall are read from one zero, wherever both ends serve', () => {
    const zeros = new Map<string, Set<string>>();
    for (const { edge, end, both } of marks) {
      const wall = edge.replace(/\.\d+$/, '');
      if (both) zeros.set(wall, (zeros.get(wall) ?? new Set()).add(end));
    }
    const ends = (wall: string) =>
      new Set(
        marks.filter((m) => m.edge.startsWith(wall)).flatMap((m) => (m.both ?? []).map(({ end }) => end)),
      );
    expect([...zeros].filter(([wall, of]) => of.size > 1 && ends(wall).size === 2)).toEqual([]);
  });
});

describe.each(named)('the lines of %s', (_, { layout, job }) => {
  const { pattern, origin } = layout;
  const place = (line: ChalkLine) => line.from[line.axis === 'along' ? 0 : 1];

  test('are the middle of a joint, to the tick', () => {
    const off = linesOf(layout).filter((line) => {
      const axis = line.axis === 'along' ? 0 : 1;
      // Half a joint before the first edge of a tile; where courses are shifted, of some course's tile.
      const edges = pattern.tiles.map(({ ring }) => origin[axis] + Math.min(...ring.map((p) => p[axis])));
      const courses =
        axis === 0 && pattern.b[0] !== 0
          ? Array.from({ length: 400 }, (__, i) => (i - 200) * pattern.b[0])
          : [0];
      return !edges.some((edge) =>
        courses.some(
          (by) => (place(line) - edge - by + Math.ceil(pattern.joint / 2)) % pattern.module[axis] === 0,
        ),
      );
    });
    expect(off).toEqual([]);
  });

  test('are straight along their axis and numbered in the order of snapping', () => {
    const all = linesOf(layout);
    expect(
      all.filter(({ from, to, axis }) => from[axis === 'along' ? 0 : 1] !== to[axis === 'along' ? 0 : 1]),
    ).toEqual([]);
    expect(all.map(({ name }) => Number(name)).sort((a, b) => a - b)).toEqual(all.map((__, i) => i + 1));
    const [first, second] = [...layout.chalk.lines].sort((a, b) => Number(a.name) - Number(b.name));
    expect(first!.snappable || !second!.snappable).toBe(true);
  });

  test('beside the first two lie a whole number of modules off, as many as a reach holds, but in legs that no such line is in reach of', () => {
    const reach = job.print.system === 'inches' ? 48 * IN : 1200 * 320;
    const stepOn = (axis: 0 | 1) =>
      pattern.module[axis] * Math.max(1, Math.floor(reach / pattern.module[axis]));
    const offGrid = (line: ChalkLine) => {
      const axis = line.axis === 'along' ? 0 : 1;
      return (place(line) - layout.chalk.crossing[axis]) % stepOn(axis) !== 0;
    };
    const wide = layout.chalk.further!.filter(offGrid);
    expect(
      wide.filter(
        (line) =>
          (place(line) - layout.chalk.crossing[line.axis === 'along' ? 0 : 1]) %
            pattern.module[line.axis === 'along' ? 0 : 1] !==
          0,
      ),
    ).toEqual([]);
    const bare = wide.map((line) =>
      bareLength(
        layout,
        line,
        linesOf(layout).filter((one) => one !== line),
        reach,
      ),
    );
    expect(bare.filter((long) => long < reach - 2 * IN)).toEqual([]);
  });
});

/** How much of a line has no other on its axis in reach over open floor, by steps of an inch along it and to both sides. */
function bareLength(
  layout: Layout,
  { axis, from, to }: ChalkLine,
  others: readonly ChalkLine[],
  reach: number,
): number {
  const [at, on] = axis === 'along' ? ([0, 1] as const) : ([1, 0] as const);
  const point = (off: number, t: number): Point => (at === 0 ? [off, t] : [t, off]);
  const isOpen = (p: Point) =>
    pointInRing(p, layout.frame.outline) && !layout.frame.obstacles.some(({ ring }) => pointInRing(p, ring));
  const near = others.filter((one) => one.axis === axis && Math.abs(one.from[at] - from[at]) <= reach);
  let bare = 0;
  for (let t = from[on] + IN / 2; t < to[on]; t += IN) {
    const isServed = near.some((one) => {
      if (one.from[on] > t || one.to[on] < t) return false;
      const steps = Math.ceil(Math.abs(one.from[at] - from[at]) / IN);
      const way = (one.from[at] - from[at]) / Math.max(1, steps);
      return Array.from({ length: steps }, (_, i) => point(from[at] + i * way, t)).every(isOpen);
    });
    if (!isServed) bare += IN;
  }
  return bare;
}

/** Fixed chance: a generator of uniform numbers (Lehmer, multiplier 48271), made normal by the sum of twelve. */
function chance(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, one) => sum + one, -6);
}

/** Where a mark falls when its printed distance is read off a tape: along the wall from the end that the tape begins at. */
function taped(
  layout: Layout,
  { edge, distance, at }: ChalkLine['marks'][number],
  step: number,
  error: number,
): Point {
  const { from, to } = edgeOf(layout, edge);
  const [ux, uy] = [(to[0] - from[0]) / apart(from, to), (to[1] - from[1]) / apart(from, to)];
  const corners = layout.frame.outline;
  const zero = (way: number): Point => [at[0] - way * ux * distance, at[1] - way * uy * distance];
  const miss = (way: number) => Math.min(...[...corners, from, to].map((corner) => apart(corner, zero(way))));
  const way = miss(1) <= miss(-1) ? 1 : -1;
  const by = way * (sawNearest(distance, step) - distance + error);
  return [at[0] + ux * by, at[1] + uy * by];
}

/** How far the line through two points lies off, at the ends of the line that was meant, and by how much it turns. */
function found([p, q]: readonly [Point, Point], { from, to }: ChalkLine) {
  const long = apart(p, q);
  const off = ([x, y]: Point) => Math.abs(((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / long);
  const cross = (q[0] - p[0]) * (to[1] - from[1]) - (q[1] - p[1]) * (to[0] - from[0]);
  return { off: Math.max(off(from), off(to)), turn: Math.abs(cross / (long * apart(from, to))) };
}

describe('lines snapped through marks that are read to 1/32 in', () => {
  const normal = chance(4711);
  const inInches = rooms.filter(
    ({ job, layout }) => job.print.system === 'inches' && layout.frame.obstacles.length === 0,
  );
  const trials = inInches.flatMap(({ layout, job }) =>
    linesOf(layout)
      .filter(({ error }) => error)
      .filter(({ marks }) => marks.length === 2)
      .flatMap((line) =>
        Array.from({ length: TRIALS }, () => {
          const ends = line.marks.map((mark) => taped(layout, mark, job.print.step, READING * normal()));
          const { off, turn } = found(ends as [Point, Point], line);
          const { error } = line;
          return { off: off <= error!.off, turn: turn * error!.over <= error!.turn };
        }),
      ),
  );

  test('lie within their expected error in 95 of 100 trials, and turn no more than expected', () => {
    expect(trials.length).toBeGreaterThan(1000);
    const share = (what: 'off' | 'turn') => trials.filter((trial) => trial[what]).length / trials.length;
    // Two standard errors of a share found in so many trials.
    const near = 2 * Math.sqrt((0.95 * 0.05) / trials.length);
    expect(Math.abs(share('off') - 0.95)).toBeLessThan(near);
    expect(Math.abs(share('turn') - 0.95)).toBeLessThan(near);
  });
});

describe('lines without two marks', () => {
  const normal = chance(4713);
  const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));
  const hall = (long: string, wide: string, hidden: readonly string[]) =>
    layOut(
      job,
      surfaceOf(
        [
          [0, 0],
          [ticks(long), 0],
          [ticks(`${long} 1 in`), ticks(wide)],
          [0, ticks(wide)],
        ],
        {
          // biome-ignore format: corners on a line
          walls: Object.fromEntries(hidden.map((wall) => [wall, { touch: false }])),
        },
      ),
    ).layout;
  const terrace = hall('20 ft', '10 ft', ['C-D', 'D-A']);
  const corridor = hall('38 ft', '38 in', ['B-C']);

  /** Where the mark of a station falls: from the end of the face along it, then square off it, as printed and as it is read. */
  const struck = (layout: Layout, { offsets }: ChalkLine, error: () => number) =>
    offsets!.stations.map(({ distance, offset }): Point => {
      const { from, to } = edgeOf(layout, offsets!.edge);
      const [ux, uy] = [(to[0] - from[0]) / apart(from, to), (to[1] - from[1]) / apart(from, to)];
      const begins = offsets!.edge.startsWith(offsets!.end);
      const on = begins ? distance : apart(from, to) - distance;
      const out = sawNearest(offset, job.print.step) + error();
      return [from[0] + ux * on - uy * out, from[1] + uy * on + ux * out];
    });

  test('are never squared off each other: they are struck through marks off a wall', () => {
    expect(terrace.chalk.lines.map(({ snappable, byOffsets }) => [snappable, byOffsets])).toEqual([
      [false, true],
      [false, true],
    ]);
  });

  test('are struck off the long wall of a corridor, which is truer than square off the short line', () => {
    const [short, long] = [...corridor.chalk.lines].sort(
      (one, other) => apart(one.from, one.to) - apart(other.from, other.to),
    );
    expect([short!.snappable, long!.byOffsets]).toEqual([true, true]);
    // Two marks read to 1/32 in: with both at the ends 2.24 times that, and half a saw step.
    expect(long!.error!.off).toBeLessThan(3.5 * READING);
  });

  test('lie within their expected error in 95 of 100 trials at least, and turn no more than expected', () => {
    const trials = [terrace, corridor].flatMap((layout) =>
      layout.chalk.lines
        .filter(({ byOffsets }) => byOffsets)
        .flatMap((line) =>
          Array.from({ length: 100 * TRIALS }, () => {
            const { off, turn } = found(
              struck(layout, line, () => READING * normal()) as [Point, Point],
              line,
            );
            return { off: off <= line.error!.off, turn: turn * line.error!.over <= line.error!.turn };
          }),
        ),
    );
    const share = (what: 'off' | 'turn') => trials.filter((trial) => trial[what]).length / trials.length;
    const near = 2 * Math.sqrt((0.95 * 0.05) / trials.length);
    expect(share('off')).toBeGreaterThan(0.95 - near);
    expect(share('off')).toBeLessThan(0.98);
    expect(Math.abs(share('turn') - 0.95)).toBeLessThan(near);
  });
});

describe('a room looked at differently', () => {
  const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));
  const L = surfaceOf([[0, 0], [ticks('20 ft'), 0], [ticks('20 ft'), ticks('9 ft')], [ticks('11 ft'), ticks('9 ft')], [ticks('11 ft'), ticks('17 ft')], [0, ticks('17 ft')]]); // biome-ignore format: an L on a line
  const truth = (layout: Layout) =>
    linesOf(layout)
      .map(({ error, marks }) => [error?.off, Math.round(apart(marks[0]!.at, marks[1]!.at) / 8)].join(' '))
      .sort();
  const first = layOut(job, L).layout;

  test.each([1, 2, 3, 4, 5])('begun at corner %i gives lines as true', (by) => {
    const turned = layOut(job, renumbered({ ...L, pattern: { ...L.pattern, along: 'A-B' } }, by)).layout;
    expect(truth(turned)).toEqual(truth(first));
  });

  test('mirrored gives lines as true', () => {
    expect(truth(layOut(job, mirrored(L, job.tiles[0]!.length + job.joint)).layout)).toEqual(truth(first));
  });

  test('at 45 degrees all marks are still there', () => {
    const slanted = layOut(job, { ...L, pattern: { ...L.pattern, turnedDeg: 45 } }).layout;
    expect(slanted.chalk.lines.every(({ snappable, marks }) => snappable && marks.length === 2)).toBe(true);
    expect(slanted.chalk.further!.length).toBeGreaterThan(3);
  });
});

describe('a cabinet in a corner', () => {
  const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));
  const cabinet = {
    ...wallFacts({ meets: 'cabinet' }),
    name: 'cabinet',
    shape: {
      kind: 'rectangle',
      along: ticks('40 in'),
      out: ticks('24 in'),
      from: [
        { wall: 'A-B', distance: 0 },
        { wall: 'D-A', distance: 0 },
      ],
    },
  } as const;
  const { chalk } = layOut(
    job,
    surfaceOf(rectangle(ticks('124 in'), ticks('98 in')), { obstacles: [cabinet] }),
  ).layout;

  test('is no corner to hook a tape on: its face is', () => {
    const onBack = chalk.lines
      .flatMap(({ marks }) => marks)
      .filter(({ edge }) => edge === 'A-B' || edge === 'D-A');
    expect(onBack.length).toBe(2);
    for (const { both } of onBack) expect(both!.map(({ end }) => end)).toContain('cabinet');
  });
});

describe('a room out of square', () => {
  // Arithmetic: a room of 142 1/2 by 119 in; the far wall of the line leans by an inch in 100.
  const corners = [[0, 0], [ticks('142 1/2 in'), 0], [ticks('142 1/2 in'), ticks('119 in')], [0, ticks('117 9/16 in')]] as const; // biome-ignore format: a room on a line
  const { chalk } = layOut(
    jobOf(ticks('12 in'), ticks('12 in'), ticks('1/8 in')),
    surfaceOf([...corners], { pattern: { along: 'C-D' } }),
  ).layout;

  test('gives two offsets from a long face that differ as the face leans', () => {
    const { edge, stations } = chalk.lines[1]!.offsets!;
    const [one, other] = stations as [(typeof stations)[0], (typeof stations)[0]];
    const lean = Math.atan((119 - 117.5625) / 142.5);
    const expected = edge === 'A-B' ? Math.tan(lean) * (other.distance - one.distance) : 0;
    expect(Math.abs(Math.abs(other.offset - one.offset) - expected)).toBeLessThan(8);
  });
});

describe('before a later zone', () => {
  const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));
  const surface = surfaceOf(rectangle(ticks('20 ft'), ticks('12 ft')));
  const { room, layout } = layOut(job, surface);
  const ground = chalkGround(job, surface, room, layout.frame);
  const names = (isIn: (column: number) => boolean) =>
    layout.pieces.filter(({ column }) => isIn(column)).map(({ id }) => id);
  const [half, rest] = [names((column) => column >= -2), names((column) => column < -2)];
  const [second] = laterLines(layout, ground, [half, rest]);

  test('lines that the laid tile covers are not offered', () => {
    const edge = Math.min(
      ...layout.pieces
        .filter(({ id }) => half.includes(id))
        .flatMap(({ fullTile }) => fullTile.map(([x]) => x)),
    );
    const bare = linesOf(layout).filter(({ name }) => second!.bare.includes(name));
    expect([...bare, ...second!.lines].length).toBeGreaterThan(0);
    for (const { from, to } of [...bare, ...second!.lines])
      expect(Math.max(from[0], to[0])).toBeLessThan(edge);
  });

  test('where none is bare a line is offered that has both its marks', () => {
    const none = laterLines({ ...layout, chalk: { ...layout.chalk, further: [] } }, ground, [half, rest])[0]!;
    expect(none.bare).toEqual([]);
    expect(none.lines.map(({ axis, marks }) => [axis, marks.length])).toEqual([['along', 2]]);
  });
});

describe('further lines', () => {
  // A whole number of modules nearest a reach of 48 in, but not over it; common practice, no source.
  test.each([
    ['12 in', '11 13/16 in', '3/16 in', '48 in'],
    ['13 3/8 in', '13 1/8 in', '1/4 in', '40 1/8 in'],
  ])('at a module of %s', (_, tile, joint, step) => {
    const { chalk } = layOut(
      jobOf(ticks(tile), ticks(tile), ticks(joint)),
      surfaceOf(rectangle(ticks('20 ft'), ticks('18 ft'))),
    ).layout;
    const places = chalk.further!.filter(({ axis }) => axis === 'along').map(({ from }) => from[0]);
    const nearest = Math.min(...places.map((x) => Math.abs(x - chalk.crossing[0])));
    expect(nearest).toBe(ticks(step));
  });

  test('come with a stick that has each joint on it', () => {
    const { chalk } = layOut(
      jobOf(ticks('13 1/8 in'), ticks('13 1/8 in'), ticks('1/4 in')),
      surfaceOf(rectangle(ticks('20 ft'), ticks('18 ft'))),
    ).layout;
    // Arithmetic: 13 3/8 · 7 = 93 5/8 in is the last within 8 ft.
    expect(chalk.poles!.map(({ joints }) => [joints.length, joints[0], joints.at(-1)])).toEqual([
      [7, ticks('13 3/8 in'), ticks('93 5/8 in')],
    ]);
  });
});
