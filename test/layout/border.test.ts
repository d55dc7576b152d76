import { describe, expect, test } from 'vitest';
import type { BorderCourse, SurfaceSpec } from '../../src/job/Job.ts';
import type { Solved } from '../../src/layout/border/Border.ts';
import { borderJoints } from '../../src/layout/border/borderJoints.ts';
import { wideJoints } from '../../src/layout/border/wideJoints.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { tileOf } from '../pattern/support/tileOf.ts';
import { areaOf } from '../support/Judged.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const GAP = ticks('1/4 in');

/** A job with a square field tile and a strip for the border. */
function jobWith(field: string, strip: readonly [string, string], joint: string) {
  const job = jobOf(ticks(field), ticks(field), ticks(joint));
  return { ...job, tiles: [...job.tiles, tileOf('band', ticks(strip[0]), ticks(strip[1]))] };
}

const course = (over: Partial<BorderCourse> = {}): BorderCourse => ({
  tile: 'band',
  width: ticks('4 in'),
  corners: 'mitred',
  ...over,
});

function room(width: string, height: string, over: Partial<SurfaceSpec>) {
  return surfaceOf(rectangle(ticks(width), ticks(height)), { facts: { gap: GAP }, over });
}

describe('a border round a rectangle, arithmetic', () => {
  const job = jobWith('11 7/8 in', ['12 in', '4 in'], '1/8 in');
  const layoutOf = (border: readonly BorderCourse[]) => layOut(job, room('10 ft', '8 ft', { border })).layout;

  test('mitred pieces along a wall add up to its length less gaps, with the joints between them', () => {
    const { pieces } = layoutOf([course()]);
    const along = pieces.filter(({ border }) => border?.wall === 'A-B');
    // 119 1/2 between gaps: nine whole with a joint on the middle would leave 5 5/16 at each end, a tile on it 11 3/8.
    expect(along.map(({ whole }) => whole)).toEqual([false, ...Array(8).fill(true), false]);
    const middles = along.reduce((sum, { shape }) => sum + areaOf(shape) / ticks('4 in'), 0);
    // Along the middle of the course each mitre takes 2 in, and half a joint square to its bisector: joint / √2 along the wall.
    const joints = 9 * ticks('1/8 in') + 2 * (ticks('1/8 in') / Math.SQRT2);
    expect(Math.abs(middles + joints - ticks('115 1/2 in'))).toBeLessThan(20);
  });

  test('mitres come in pairs of mirror images, each with its longer side to the wall', () => {
    const { pieces } = layoutOf([course()]);
    const ends = pieces.filter(({ border, whole }) => border && !whole);
    expect(ends.map(({ id }) => id)).toEqual([
      'AB-1',
      'AB-10',
      'BC-1',
      'BC-8',
      'CD-1',
      'CD-10',
      'DA-1',
      'DA-8',
    ]);
    expect(ends.every(({ shape }) => shape.outer.length === 4)).toBe(true);
  });

  /** From where to where a course of a layout lies along a wall that runs along x. */
  const reach = ({ pieces }: Layout, wall: string, number = 1) => {
    const xs = pieces.flatMap(({ border, shape }) =>
      border?.wall === wall && border.course === number ? shape.outer.map(([x]) => x) : [],
    );
    return [Math.min(...xs), Math.max(...xs)];
  };

  test('butted, each side runs through to the wall on its right as you face it, and stops a joint before the next', () => {
    const layout = layoutOf([course({ corners: 'butted', through: 'right' })]);
    const stop = ticks('4 1/4 in') + ticks('1/8 in');
    expect(reach(layout, 'A-B')).toEqual([GAP, ticks('10 ft') - stop]);
    expect(reach(layout, 'C-D')).toEqual([stop, ticks('10 ft') - GAP]);
    expect(reach(layoutOf([course({ corners: 'butted' })]), 'A-B')).toEqual(reach(layout, 'A-B'));
  });

  test('or on its left, where the job says so, each course by its own', () => {
    const butted = course({ corners: 'butted', through: 'left' });
    const layout = layoutOf([butted, { ...butted, width: ticks('2 in'), through: 'right' }]);
    const stop = ticks('4 1/4 in') + ticks('1/8 in');
    expect(reach(layout, 'A-B')).toEqual([stop, ticks('10 ft') - GAP]);
    expect(reach(layout, 'C-D')).toEqual([GAP, ticks('10 ft') - stop]);
    expect(reach(layout, 'A-B', 2)).toEqual([stop, ticks('10 ft') - stop - ticks('2 1/8 in')]);
  });

  test('a second course begins a joint inside the first, the field a joint inside the last', () => {
    const { pieces, border, inner } = layoutOf([course(), course({ width: ticks('2 in') })]);
    const ys = (number: number) =>
      pieces.flatMap(({ border: of, shape }) =>
        of?.wall === 'A-B' && of.course === number ? shape.outer.map(([, y]) => y) : [],
      );
    expect([Math.min(...ys(1)), Math.max(...ys(1))]).toEqual([ticks('1/4 in'), ticks('4 1/4 in')]);
    expect([Math.min(...ys(2)), Math.max(...ys(2))]).toEqual([ticks('4 3/8 in'), ticks('6 3/8 in')]);
    expect(Math.min(...inner![0]!.outer.map(([, y]) => y))).toBe(ticks('6 1/2 in'));
    expect(border!.lines.map(({ off }) => off)).toEqual(Array(4).fill(ticks('6 3/8 in')));
    expect(pieces.some(({ id }) => id === 'AB2-1')).toBe(true);
  });

  test('a course narrower than its tile keeps the factory edge to the field', () => {
    const { pieces } = layoutOf([course({ width: ticks('3 in') })]);
    const { fullTile, shape } = pieces.find(({ id }) => id === 'AB-5')!;
    expect(Math.max(...shape.outer.map(([, y]) => y))).toBe(Math.max(...fullTile.map(([, y]) => y)));
    expect(Math.min(...shape.outer.map(([, y]) => y))).toBe(GAP);
  });
});

describe('a doorway behind a border, arithmetic', () => {
  const job = jobWith('11 7/8 in', ['12 in', '4 in'], '1/8 in');
  const side = { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) } as const;
  const doorway = {
    name: 'hall',
    wall: 'A-B',
    fromCorner: 'A',
    from: ticks('30 in'),
    clear: ticks('32 in'),
    wallThickness: ticks('4 3/4 in'),
    doorLine: ticks('2 3/8 in'),
    left: side,
    right: side,
    beyond: 'wood',
    line: wallFacts({ meets: 'doorway', gap: ticks('3/16 in') }),
    onlyExit: true,
  } as const;
  const { pieces } = layOut(job, room('10 ft', '8 ft', { border: [course()], doorways: [doorway] })).layout;

  test('the border runs straight past it', () => {
    const along = pieces.filter(({ border }) => border?.wall === 'A-B' && border.course === 1);
    expect(new Set(along.map(({ shape }) => Math.min(...shape.outer.map(([, y]) => y))))).toEqual(
      new Set([GAP]),
    );
  });

  test('its floor is laid in the tile of the outer course, from a joint behind the border to the door line', () => {
    const behind = pieces.filter(({ border }) => border?.course === 0);
    expect(behind.map(({ id }) => id)).toEqual(['AB-d1', 'AB-d2', 'AB-d3']);
    const ys = behind.flatMap(({ shape }) => shape.outer.map(([, y]) => y));
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([-ticks('2 3/16 in'), GAP - ticks('1/8 in')]);
  });
});

describe('a width that is open, arithmetic', () => {
  test('in a hall of 36 in with 12 in tile at 45 degrees is 4 11/16 in, so that it ends on half tiles', () => {
    const job = jobWith('12 in', ['12 in', '6 in'], '3/16 in');
    const surface = room('120 in', '36 in', {
      border: [course({ width: 'solve' })],
      pattern: { name: 'straight', tile: 'field', turnedDeg: 45, along: 'A-B' },
    });
    const { border } = layOut(job, surface).layout;
    expect(border!.courses[0]).toMatchObject({
      width: ticks('4 11/16 in'),
      solved: { ends: 'half', repeats: 3 },
    });
  });

  test('with tile square to the walls leaves whole tiles along the longer walls', () => {
    const job = jobWith('11 7/8 in', ['12 in', '6 in'], '1/8 in');
    const surface = room('10 ft', '8 ft', { border: [course({ width: 'solve' })] });
    const { border, pieces } = layOut(job, surface).layout;
    // 95 1/2 between gaps; seven modules less a joint and two joints are 84 1/8, so 5 11/16 on each side.
    expect(border!.courses[0]).toMatchObject({
      width: ticks('5 11/16 in'),
      solved: { ends: 'whole', repeats: 7 },
    });
    const field = pieces.filter((piece) => !piece.border);
    expect(
      new Set(
        field.map(
          ({ shape }) =>
            Math.max(...shape.outer.map(([, y]) => y)) - Math.min(...shape.outer.map(([, y]) => y)),
        ),
      ),
    ).toEqual(new Set([ticks('11 7/8 in')]));
  });
});

describe('a width that is open both ways, arithmetic', () => {
  const job = jobWith('11 7/8 in', ['12 in', '6 in'], '1/8 in');
  const open = (width: BorderCourse['width']) => ({ border: [course({ width })] });
  const solvedIn = (surface: SurfaceSpec) => layOut(job, surface).layout.border!.courses[0]!;

  test('serves both pairs of walls where one width does', () => {
    // 119 1/2 less 11 3/8 and two joints: 107 7/8, nine modules less a joint.
    expect(solvedIn(room('10 ft', '8 ft', open('solve')))).toMatchObject({
      width: ticks('5 11/16 in'),
      solved: {
        walls: ['A-B', 'C-D'],
        other: { walls: ['B-C', 'D-A'], ends: 'whole', repeats: 9, run: ticks('107 7/8 in') },
      },
    });
  });

  test('serves both where their widths differ by half a saw step, in whole tiles by the narrower one', () => {
    // 1/16 in longer the other way: 5 23/32 in would be clean there, a saw step of 1/16 in in the run.
    expect(solvedIn(room('120 1/16 in', '8 ft', open('solve')))).toMatchObject({
      width: ticks('5 11/16 in'),
      solved: { ends: 'whole', other: { ends: 'whole', repeats: 9, run: ticks('107 15/16 in') } },
    });
    expect(solvedIn(room('119 15/16 in', '8 ft', open('solve')))).toMatchObject({
      width: ticks('5 21/32 in'),
      solved: {
        ends: 'whole',
        run: ticks('83 15/16 in'),
        other: { ends: 'whole', run: ticks('107 7/8 in') },
      },
    });
  });

  test('else goes by the walls that face each other over the greatest length, and tells what is left over the other way', () => {
    expect(solvedIn(room('124 in', '8 ft', open('solve')))).toMatchObject({
      width: ticks('5 11/16 in'),
      solved: {
        walls: ['A-B', 'C-D'],
        ends: 'whole',
        other: { ends: 'none', repeats: 9, over: ticks('4 in') },
      },
    });
  });

  test('or by the walls that the job names', () => {
    // 123 1/2 less two joints is 123 1/4; nine modules less a joint leave 15 3/8 and ten 3 3/8: 1 11/16 on each side.
    const named = solvedIn(room('124 in', '8 ft', open({ between: ['D-A', 'B-C'] })));
    expect(named).toMatchObject({
      width: ticks('1 11/16 in'),
      solved: {
        walls: ['B-C', 'D-A'],
        ends: 'whole',
        repeats: 10,
        other: { walls: ['A-B', 'C-D'], ends: 'none', over: ticks('8 in') },
      },
    });
  });

  test('where the longer walls leave no width the shorter ones do', () => {
    // 94 in: 93 1/2 less two joints is 93 1/4; seven modules less a joint leave 9 3/8: 4 11/16. 86 in long: 85 1/4, 1 3/8 or 13 3/8: none within 2 and 6.
    const least = { minStrip: ticks('2 in') };
    const { width, solved } = solvedIn(room('94 in', '86 in', { ...open('solve'), ...least }));
    expect([width, solved!.walls, solved!.other!.ends]).toEqual([
      ticks('4 11/16 in'),
      ['B-C', 'D-A'],
      'none',
    ]);
  });

  test('comes out the same turned, mirrored and renumbered', () => {
    const walls = (solved: Solved) =>
      [solved, solved.other!].map(({ walls: own, run, ends }) => [
        own.map((wall) => [...wall].sort().join('')).sort(),
        run,
        ends,
      ]);
    for (const width of ['solve', { between: ['D-A', 'B-C'] }] as const) {
      const surface = room('124 in', '8 ft', open(width));
      const own = solvedIn(surface);
      for (const other of [renumbered(surface, 1), renumbered(surface, 3), mirrored(surface, 0)]) {
        const found = solvedIn(other);
        expect([found.width, walls(found.solved!)]).toEqual([own.width, walls(own.solved!)]);
      }
    }
  });
});

describe('a border that a room has no place for', () => {
  const job = jobWith('11 7/8 in', ['12 in', '6 in'], '1/8 in');
  const problemsIn = (surface: SurfaceSpec) => {
    const made = makeRoom(surface);
    const laid = 'room' in made ? makeLayout(job, surface, made.room) : made;
    return 'problems' in laid ? laid.problems : [];
  };

  test('is refused, its place and its width told', () => {
    const surface = room('10 ft', '14 in', { border: [course({ width: ticks('6 in') }), course()] });
    expect(problemsIn(surface)).toMatchObject([
      { code: 'borderTooWide', path: ['floor', 'border'], figures: { width: '10 1/8 in' } },
    ]);
  });
});

describe('the joint between a border and its field', () => {
  const edge = { id: 'border:A-B', name: 'A-B', ...wallFacts({ meets: 'border' }) };
  const upright = (from: readonly [number, number], to: readonly [number, number]) => ({ ...edge, from, to });
  const tile = (y: number) => ({
    shape: { outer: rectangle(900, 900).map(([x, z]) => [x, z + y] as const), holes: [] },
  });

  test('is wider where a whole row ends short of it, by what is missing', () => {
    const [found] = wideJoints([upright([0, 0], [1000, 0])], [tile(140)], 100);
    expect(found).toEqual({ edge: 'border:A-B', axis: 1, side: 'low', more: 40, pieces: [0] });
  });

  test('is as it should be where the row reaches it, or is cut along it', () => {
    expect(wideJoints([upright([0, 0], [1000, 0])], [tile(100)], 100)).toEqual([]);
    expect(wideJoints([upright([0, 0], [1000, 0])], [tile(140), tile(101)], 100)).toEqual([]);
  });

  // A chevron's length along the wall is rarely a whole tick: 52 ticks are 1/156 in.
  test('is told as wider from a sixty-fourth of an inch on', () => {
    const told = (more: number) =>
      borderJoints(
        { frame: { edges: [upright([0, 0], [1000, 0])] } } as unknown as Parameters<typeof borderJoints>[0],
        [{ id: 'K1', laid: tile(200 + more) }] as unknown as Parameters<typeof borderJoints>[1],
        200,
      );
    expect(told(52)).toEqual([]);
    expect(told(127)).toMatchObject([{ figures: { size: 327, limit: 200 }, pieces: ['K1'] }]);
  });

  test('is not asked of a border that leans: its tiles are cut along it', () => {
    expect(wideJoints([upright([0, 0], [1000, 20])], [tile(140)], 100)).toEqual([]);
  });
});
