import { describe, expect, test } from 'vitest';
import type { SurfaceSpec } from '../../../src/job/Job.ts';
import { placeNamed } from '../../../src/layout/frame/placeNamed.ts';
import { slantOf } from '../../../src/layout/frame/slantOf.ts';
import { turnOf } from '../../../src/layout/frame/turnOf.ts';
import { makeLayout } from '../../../src/layout/makeLayout.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import { layOut } from '../../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../../support/surfaceOf.ts';

const job = jobOf(ticks('11 7/8 in'), ticks('11 7/8 in'), ticks('1/8 in'));
const at = (x: string, y: string) => [ticks(x), ticks(y)];
const from = (x: string, y: string) =>
  [
    { wall: 'D-A', distance: ticks(x) },
    { wall: 'A-B', distance: ticks(y) },
  ] as const;

/** A room of 120 in by 96 in; a doorway of 30 in begins 33 in up the left wall. */
const surface = surfaceOf(rectangle(ticks('120 in'), ticks('96 in')), {
  doorways: [
    {
      ...{ name: 'hall', wall: 'D-A', fromCorner: 'A', from: ticks('33 in'), clear: ticks('30 in') },
      ...{ wallThickness: ticks('4 in'), doorLine: ticks('2 in'), beyond: 'wood', onlyExit: true },
      left: { kind: 'undercut', tuck: ticks('1/2 in'), facts: wallFacts() },
      right: { kind: 'plain', facts: wallFacts() },
      line: wallFacts({ meets: 'doorway' }),
    },
  ],
  obstacles: [
    { ...wallFacts(), name: 'flange', shape: { kind: 'circle', diameter: ticks('7 in'), from: from('80 in', '40 in') } },
    { ...wallFacts(), name: 'vanity', shape: { kind: 'rectangle', along: ticks('30 in'), out: ticks('20 in'), from: from('100 in', '20 in') } },
    { ...wallFacts(), name: 'hearth', shape: { kind: 'polygon', walls: ['D-A', 'A-B'], points: [[ticks('40 in'), ticks('60 in')], [ticks('52 in'), ticks('60 in')], [ticks('40 in'), ticks('84 in')]] } },
  ],
}); // biome-ignore format: each thing on a line

const bowed = (rise: number): SurfaceSpec => ({
  ...surface,
  walls: surface.walls.map((wall) => (wall.id === 'A-B' ? { ...wall, rise } : wall)),
});

function roomOf(spec: SurfaceSpec) {
  const made = makeRoom(spec);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.room;
}

const room = roomOf(surface);
const along = (one: string, other: string, turnedDeg = 0) =>
  ({ ...surface.pattern, turnedDeg, along: { kind: 'sight', from: one, to: other } }) as const;

describe('a name stands for a place', () => {
  test.each([
    ['C', at('120 in', '96 in')],
    ['B-C', at('120 in', '48 in')],
    // The clear opening, not what slides under its casing.
    ['hall', at('0 in', '48 in')],
    ['flange', at('80 in', '40 in')],
    ['vanity', at('110 in', '35 in')],
    ['hearth', at('44 in', '68 in')],
  ])('%s', (name, place) => {
    expect(placeNamed(room, name)).toEqual(place);
  });

  test('that of a bowed wall on its face', () => {
    expect(placeNamed(roomOf(bowed(ticks('1 in'))), 'A-B')).toEqual([ticks('60 in'), -ticks('1 in')]);
    expect(placeNamed(roomOf(bowed(-ticks('1 in'))), 'A-B')).toEqual(at('60 in', '1 in'));
  });

  test('and no other name does', () => {
    expect(() => placeNamed(room, 'attic')).toThrow('attic');
  });
});

describe('a pattern along a line from place to place', () => {
  test.each([
    ['hall', 'B-C', 0],
    ['B-C', 'hall', -180],
    ['A-B', 'C-D', 90],
    ['B', 'D', 180 - (Math.atan(96 / 120) * 180) / Math.PI],
    ['hall', 'flange', (Math.atan(-8 / 80) * 180) / Math.PI],
  ])('from %s to %s', (one, other, degrees) => {
    expect((turnOf(room, along(one, other)).turn * 180) / Math.PI).toBeCloseTo(degrees, 9);
  });

  test('lies along the wall to the bit where the line does', () => {
    expect(turnOf(room, along('hall', 'B-C')).turn).toBe(0);
    expect(turnOf(room, along('A-B', 'C-D', 90)).turn).toBe(-Math.PI);
  });

  test('lies aslant where the line does, told from the walls', () => {
    const { layout } = layOut(job, { ...surface, pattern: along('B', 'D') });
    const slant = slantOf(along('B', 'D'), layout.frame.edges);
    expect(Math.abs(Math.abs(slant) - (Math.atan(96 / 120) * 180) / Math.PI)).toBeLessThan(0.01);
  });

  test('has a chalk line beside it, as far off at both ends', () => {
    const { chalk } = layOut(job, { ...surface, pattern: along('hall', 'flange') }).layout;
    const { from: one, to: other, beside } = chalk.sight!;
    const line = chalk.lines.find(({ name }) => name === beside!.line)!;
    for (const end of [one, other])
      expect(Math.abs(Math.abs(end[1] - line.from[1]) - beside!.off)).toBeLessThanOrEqual(1);
    expect(Math.hypot(other[0] - one[0], other[1] - one[1]) / ticks('1 in')).toBeCloseTo(
      Math.hypot(80, 8),
      2,
    );
  });

  test('turned by a quarter it has the other one', () => {
    const { chalk } = layOut(job, { ...surface, pattern: along('hall', 'flange', 90) }).layout;
    const { from: one, to: other, beside } = chalk.sight!;
    const line = chalk.lines.find(({ name }) => name === beside!.line)!;
    for (const end of [one, other])
      expect(Math.abs(Math.abs(end[0] - line.from[0]) - beside!.off)).toBeLessThanOrEqual(1);
  });

  test('turned by less it has none', () => {
    const { chalk } = layOut(job, { ...surface, pattern: along('hall', 'flange', 45) }).layout;
    expect(chalk.sight!.beside).toBeUndefined();
  });

  test('is refused where the line is too short to have a direction', () => {
    // From the middle of the right wall to that of the vanity before it: 10 in and 13 in.
    const pattern = along('B-C', 'vanity');
    expect(makeLayout(job, { ...surface, pattern }, room)).toMatchObject({
      problems: [
        {
          code: 'lineTooShort',
          path: ['floor', 'pattern', 'along'],
          figures: { from: 'B-C', to: 'vanity', least: '24 in' },
        },
      ],
    });
  });
});
