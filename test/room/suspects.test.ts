import { describe, expect, it } from 'vitest';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { makeAdjustment } from '../../src/room/makeAdjustment.ts';
import type { Adjustment } from '../../src/room/Room.ts';
import { chance } from '../support/chance.ts';
import { crooked, ell, ellDiagonals, type Plan, quad, readRoom } from './support/simulate.ts';
import { box, inch, points, problemsOf, roomOf, surface, type Wish } from './support/surface.ts';

const quadDiagonals = [
  [0, 2],
  [1, 3],
] as const;
const twiceQuad: Plan = { corners: quad, diagonals: quadDiagonals, times: 2 };

/** Readings of a room without any error, with slips in inches added to the reading named, such as `A-C` or its second, `A-C 1`. */
function slipped(plan: Plan, slips: Readonly<Record<string, number>>, over: Partial<SurfaceSpec> = {}) {
  const by = chance(3);
  const exact = readRoom(crooked(plan.corners, by), plan, 0, by);
  const change = <One extends { id: string; readings: readonly number[] }>(one: One): One => ({
    ...one,
    readings: one.readings.map((read, k) => {
      const slip = slips[`${one.id} ${k}`] ?? slips[one.id] ?? 0;
      return read + inch(slip);
    }),
  });
  const spec = { ...exact, walls: exact.walls.map(change), diagonals: exact.diagonals.map(change), ...over };
  return makeAdjustment(spec).adjustment;
}

const told = ({ suspects }: Adjustment) =>
  suspects.map(({ ids, which, verdict }) => ({ ids, which, verdict }));

describe('readings without a slip', () => {
  it('are not suspected, and agree as a whole', () => {
    const found = slipped(twiceQuad, {});
    expect(found.suspects).toEqual([]);
    expect(found.globalTest).toMatchObject({ passed: true });
    expect(found).toMatchObject({ redundancy: 1, degreesOfFreedom: 7 });
  });
});

describe('one slip', () => {
  it.each(['A-B 0', 'B-C 1', 'A-C 0', 'B-D 1'])('in %s of a room read twice is named', (wrong) => {
    const [id, which] = wrong.split(' ');
    const found = slipped(twiceQuad, { [wrong]: 1 });
    expect(told(found)).toEqual([{ ids: [id], which: [Number(which)], verdict: 'named' }]);
    // Everything else is exact, so that the others tell the slip to a sixty-fourth.
    expect(Math.abs(found.suspects[0]!.slip - inch(1))).toBeLessThan(127);
    expect(found.suspects[0]!.kind).toBe('inch');
  });

  it('made alike in both readings of a diagonal is that of the diagonal', () => {
    const found = slipped({ corners: ell, diagonals: ellDiagonals, times: 2 }, { 'B-F': -2 });
    expect(told(found)).toEqual([{ ids: ['B-F'], which: [null], verdict: 'named' }]);
    expect(Math.abs(found.suspects[0]!.slip + inch(2))).toBeLessThan(127);
  });

  it('where one reading is more than needed could be in any of them: those it would explain as a usual one come first', () => {
    const found = slipped({ corners: quad, diagonals: quadDiagonals, times: 1 }, { 'B-D': 10 });
    const [only] = found.suspects;
    expect(found.suspects).toHaveLength(1);
    expect([...only!.ids].sort()).toEqual(['A-B', 'A-C', 'B-C', 'B-D', 'C-D', 'D-A']);
    expect(only).toMatchObject({ verdict: 'tied', kind: 'tenInches' });
    expect(only!.ids.slice(0, 2)).toContain('B-D');
  });

  it('in a room that nothing checks stays hidden: any slip could', () => {
    const found = slipped({ corners: quad, diagonals: [[0, 2]], times: 1 }, { 'A-C': 1 });
    expect(found.suspects).toEqual([]);
    expect(found).toMatchObject({ redundancy: 0, degreesOfFreedom: 0, unitSd: null, globalTest: null });
    for (const one of found.readings)
      expect(one).toMatchObject({ redundancyNumber: 0, test: null, smallestSlip: null });
  });

  it('in one of two readings of a wall is seen without any diagonal, but not in which', () => {
    const found = slipped({ corners: quad, diagonals: [], times: 2 }, { 'C-D 1': 1.5 });
    expect(found.method).toBe('compass');
    expect(told(found)).toEqual([{ ids: ['C-D'], which: [null], verdict: 'named' }]);
  });
});

describe('two slips', () => {
  it('are both named, the larger first', () => {
    const found = slipped(
      { corners: ell, diagonals: ellDiagonals, times: 2 },
      { 'A-B 0': 1, 'C-F 1': 0, 'B-F 1': -2 },
    );
    expect(told(found)).toEqual([
      { ids: ['B-F'], which: [1], verdict: 'named' },
      { ids: ['A-B'], which: [0], verdict: 'named' },
    ]);
  });
});

describe('readings of unknown precision', () => {
  const unknown: SurfaceSpec['precision'] = { kind: 'unknown', sd: inch(1 / 8) };
  const noisy = (slip: number, precision = unknown) => {
    const by = chance(9);
    const plan: Plan = { corners: ell, diagonals: ellDiagonals, times: 2 };
    const spec = readRoom(crooked(ell, by), plan, inch(1 / 32), by);
    const walls = spec.walls.map((wall, i) =>
      i === 2 ? { ...wall, readings: [wall.readings[0]! + inch(slip), wall.readings[1]!] } : wall,
    );
    return makeAdjustment({ ...spec, walls, precision }).adjustment;
  };

  it('are tested by tau against what they show themselves', () => {
    const found = noisy(0);
    expect(found.suspects).toEqual([]);
    expect(found.globalTest).toBeNull();
    expect(found.readings[0]!.test?.kind).toBe('tau');
    // They were made with a quarter of the standard deviation that only weighs them.
    expect(found.unitSd).toBeGreaterThan(0.15);
    expect(found.unitSd).toBeLessThan(0.4);
  });

  it('tell of a slip that would pass for tape work', () => {
    expect(told(noisy(3 / 8))).toMatchObject([{ ids: ['C-D'], verdict: 'named' }]);
    expect(noisy(3 / 8, { kind: 'stated', sd: inch(1 / 8) }).suspects).toEqual([]);
  });
});

describe('readings in each other’s place', () => {
  const room = points([0, 0], [96, 0], [93, 62], [2, 58]);
  const across = (i: number, j: number) =>
    Math.round(Math.hypot(room[j]![0] - room[i]![0], room[j]![1] - room[i]![1]));
  const exact: Record<string, number> = Object.fromEntries(
    ['A-B', 'B-C', 'C-D', 'D-A'].map((id, i) => [id, across(i, (i + 1) % 4)]),
  );
  const diagonals = { 'A-C': across(0, 2), 'B-D': across(1, 3) };

  it('are told as such when they are those of two walls that meet: in a mirror the other two would do', () => {
    const wrong = { ...exact, 'B-C': exact['C-D']!, 'C-D': exact['B-C']! };
    const [problem] = problemsOf({ walls: wrong, diagonals });
    expect(problem).toMatchObject({
      code: 'misclosure',
      path: ['floor', 'walls', 'B-C'],
      figures: { verdict: 'exchanged', pairs: 'B-C – C-D, D-A – A-B' },
    });
  });

  it('are one pair in a room of more walls', () => {
    const by = chance(4);
    const spec = readRoom(crooked(ell, by), { corners: ell, diagonals: ellDiagonals, times: 1 }, 0, by);
    const read = spec.walls.map(({ readings }) => readings);
    const order = [0, 1, 3, 2, 4, 5];
    const walls = spec.walls.map((wall, i) => ({ ...wall, readings: read[order[i]!]! }));
    const { suspects } = makeAdjustment({ ...spec, walls }).adjustment;
    expect(suspects).toMatchObject([{ ids: ['C-D', 'D-E'], verdict: 'named', kind: 'exchanged' }]);
  });

  it('of a rectangle without a diagonal could be either pair', () => {
    const spec = surface({ walls: { 'A-B': inch(60), 'B-C': inch(96), 'C-D': inch(96), 'D-A': inch(60) } });
    const { suspects } = makeAdjustment(spec).adjustment;
    expect(suspects.map(({ ids, verdict, kind }) => [ids.join(' '), verdict, kind])).toEqual([
      ['A-B B-C', 'tied', 'exchanged'],
      ['C-D D-A', 'tied', 'exchanged'],
    ]);
  });

  it('are not looked for where nothing disagrees', () => {
    expect(roomOf({ walls: exact, diagonals }).adjustment.suspects).toEqual([]);
  });
});

describe('a wall read as the one beside it', () => {
  it('is named with what it looks like', () => {
    const plan: Plan = { corners: ell, diagonals: ellDiagonals, times: 1, checks: [36, 48] };
    const by = chance(4);
    const spec = readRoom(ell, plan, 0, by);
    const walls = spec.walls.map((wall) => (wall.id === 'B-C' ? { ...wall, readings: [inch(84)] } : wall));
    const { suspects } = makeAdjustment({ ...spec, walls }).adjustment;
    expect(suspects).toMatchObject([{ ids: ['B-C'], verdict: 'named', kind: 'asNeighbour' }]);
  });
});

describe('a reading set aside', () => {
  const wish: Wish = { walls: box(96, 60), diagonals: { 'A-C': '114 3/4 in', 'B-D': '113 1/4 in' } };
  const room = roomOf({ ...wish, setAside: ['A-C'] });

  it('keeps its place among the readings and leaves the shape to the others', () => {
    const without = roomOf({ walls: wish.walls, diagonals: { 'B-D': '113 1/4 in' } });
    expect(room.corners).toEqual(without.corners);
    expect(room.adjustment.redundancy).toBe(0);
    const aside = room.adjustment.readings.find(({ id }) => id === 'A-C')!;
    expect(aside).toMatchObject({ setAside: true, test: null, read: [inch(114.75)] });
    expect(aside.used + 0).toBe(aside.mean + aside.correction);
  });

  it('cannot be a wall that the walk needs', () => {
    const found = problemsOf({ walls: box(96, 60), setAside: ['B-C'] });
    expect(found).toMatchObject([{ code: 'setAsideNeeded', path: ['floor', 'set aside'] }]);
  });

  it('can be a wall that diagonals make up for', () => {
    const { walls, diagonals } = {
      walls: { ...box(96, 60), 'B-C': inch(72) },
      diagonals: { 'A-C': inch(Math.hypot(96, 60)), 'B-D': inch(Math.hypot(96, 60)) },
    };
    const found = roomOf({ walls, diagonals, setAside: ['B-C'] }).adjustment;
    expect(Math.abs(found.readings[1]!.used - inch(60))).toBeLessThanOrEqual(2);
  });
});
