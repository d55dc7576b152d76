import { describe, expect, test } from 'vitest';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import type { Room } from '../../src/room/Room.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';

const IN = 8128;

/** A room of 10 by 8 ft whose walls' middles stand out of it by so many inches. */
function room(rises: Readonly<Record<string, number>>, more: Partial<SurfaceSpec> = {}): SurfaceSpec {
  const surface = surfaceOf(rectangle(120 * IN, 96 * IN));
  const walls = surface.walls.map((wall) => ({ ...wall, rise: Math.round((rises[wall.id] ?? 0) * IN) }));
  return { ...surface, walls, ...more };
}

function made(surface: SurfaceSpec): Room {
  const found = makeRoom(surface);
  if ('problems' in found) throw new Error(JSON.stringify(found.problems));
  return found.room;
}

const hall = {
  name: 'hall',
  wall: 'A-B',
  fromCorner: 'A',
  from: 40 * IN,
  clear: 30 * IN,
  wallThickness: 4 * IN,
  doorLine: 2 * IN,
  left: { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) },
  right: { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) },
  beyond: 'wood',
  line: wallFacts({ meets: 'doorway' }),
  onlyExit: true,
} as const;

describe('a wall whose middle was read', () => {
  test('is an arc through both corners and that middle, edge by edge under one name', () => {
    const { edges, corners } = made(room({ 'A-B': -0.25 }));
    const own = edges.filter(({ name }) => name === 'A-B');
    expect(own.map(({ id }) => id)).toEqual(['A-B', 'A-B.2', 'A-B.3', 'A-B.4', 'A-B.5', 'A-B.6']);
    expect([own[0]!.from, own[3]!.from, own[5]!.to]).toEqual([corners[0], [60 * IN, IN / 4], corners[1]]);
    for (const { from, arc } of own)
      expect(
        Math.abs(Math.hypot(from[0] - arc!.centre[0], from[1] - arc!.centre[1]) - arc!.radius),
      ).toBeLessThan(2);
  });

  test('takes a doorway where it hardly bends, as deep as its middle', () => {
    const { edges, openings } = made(room({ 'A-B': -0.25 }, { doorways: [hall] }));
    const [right, left] = openings[0]!.face;
    // The bow at u is 1/4 in less (u − 60 in)² / 28,800 in: a flat arc, arithmetic.
    const bow = (u: number) => IN * (0.25 - (u - 60) ** 2 / 14400);
    expect([right, left].map(([, y]) => y)).toEqual([Math.round(bow(70)), Math.round(bow(40))]);
    const line = edges.find(({ id }) => id === 'hall:line')!;
    expect(line.from[1]).toBe(line.to[1]);
    expect(line.from[1]).toBe(Math.round(bow(55) - 2 * IN));
  });

  test('is measured from where its face is, not from the line between its corners', () => {
    const from = [
      { wall: 'A-B', distance: 12 * IN },
      { wall: 'D-A', distance: 60 * IN },
    ] as const;
    const pipe = { ...wallFacts(), name: 'pipe', shape: { kind: 'circle', diameter: IN, from } } as const;
    const [found] = made(room({ 'A-B': 6 }, { obstacles: [pipe] })).obstacles;
    expect(found!.circle!.centre).toEqual([60 * IN, 6 * IN]);
  });

  test('bears marks where a tape follows it, and none where it is curved', () => {
    const marked = (rise: number) => {
      const { layout } = layOut(
        jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), 1524),
        room({ 'A-B': rise }),
      );
      return layout.chalk.lines[0]!.marks.filter(({ edge }) => edge.startsWith('A-B'));
    };
    expect(marked(6)).toEqual([]);
    expect(marked(-0.25).map(({ end, distance }) => [end, distance])).toEqual([
      ['A', Math.round(IN * Math.hypot(60, 0.25))],
    ]);
  });
});

describe('a wall that bends too much is refused', () => {
  test.each([
    ['more than half a circle', room({ 'A-B': 61 }), 'middleTooLarge', 'A-B'],
    ['into the wall opposite', room({ 'A-B': -40, 'C-D': -58 }), 'curveCrosses', 'A-B'],
    ['behind a door', room({ 'A-B': 6 }, { doorways: [hall] }), 'doorwayInCurve', 'hall'],
  ])('%s', (_, surface, code, name) => {
    const found = makeRoom(surface);
    const problems = 'problems' in found ? found.problems : [];
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]!.path).toContain(name);
  });
});
