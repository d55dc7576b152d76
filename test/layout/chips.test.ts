import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job, SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout, Piece } from '../../src/layout/Layout.ts';
import { judgeCuts } from '../cuts/support/judgeCuts.ts';
import { judge, toJsts } from '../geometry/oracle.ts';
import { judged } from '../support/Judged.ts';
import { judgeCover } from '../support/judgeCover.ts';
import { judgeDistance } from '../support/judgeDistance.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const JOINT = ticks('1/8 in');
/** Sheets of ten chips of 1 in each way, with the joints between them and none round them. */
const base = jobOf(ticks('11 1/8 in'), ticks('11 1/8 in'), JOINT);
const job = { ...base, tiles: base.tiles.map((tile) => ({ ...tile, chips: [10, 10] as const })) };
const [GAP, MOST] = [ticks('1/4 in'), ticks('1/2 in')];

const room = (width: string, height: string, turnedDeg = 0) =>
  surfaceOf(rectangle(ticks(width), ticks(height)), {
    facts: { gap: GAP, gapMax: MOST },
    pattern: { name: 'straight', tile: 'field', along: 'A-B', turnedDeg },
  });

/** The part of each chip of a sheet that its piece has, 0 to 1: the chips as they are counted, not as they are laid. */
function partsOf({ fullTile, shape }: Pick<Piece, 'fullTile' | 'shape'>): number[] {
  const [x, y] = [Math.min(...fullTile.map(([u]) => u)), Math.min(...fullTile.map(([, v]) => v))];
  const chip = ticks('1 in');
  return Array.from({ length: 100 }, (_, i) => {
    const [left, low] = [x + (i % 10) * (chip + JOINT), y + Math.floor(i / 10) * (chip + JOINT)];
    const ring = [[left, low], [left + chip, low], [left + chip, low + chip], [left, low + chip]] as const; // biome-ignore format: a chip on a line
    const whole = toJsts([{ outer: ring, holes: [] }]);
    return judge.intersection(whole, toJsts([shape])).getArea() / chip ** 2;
  });
}

const isSawn = (part: number) => part > 1e-3 && part < 1 - 1e-3;
const sawnIn = ({ pieces }: Layout, wall: string) =>
  pieces
    .filter(({ edges }) => edges.includes(wall) && edges.length === 1)
    .flatMap(partsOf)
    .filter(isSawn);
const gapsIn = ({ frame }: Layout) => frame.edges.map(({ id, gap }) => [id, gap] as const);

const rooms = ['100', '101', '101 1/4', '102 5/8', '103 1/16', '104 1/4', '105'].map((long) => {
  const surface = room(`${long} in`, '79 in');
  return [long, surface, layOut(job, surface).layout] as const;
});

describe('mosaic on sheets, arithmetic', () => {
  test('is cut between chips where the gap up to there is covered', () => {
    // 99 1/4 between gaps. A sheet on the middle leaves 43 15/16 beside it after the joint: three sheets with their joints are 33 3/4, and
    // of the 10 3/16 that remain nine chips take 10 in. The gap of 1/4 in becomes 7/16 in, under the 1/2 in that is covered.
    const { chips, pieces, start } = layOut(job, room('99 3/4 in', '99 3/4 in')).layout;
    expect(chips).toEqual({
      count: [10, 10],
      between: ['A-B', 'B-C', 'C-D', 'D-A'].map((edge) => ({ edge, gap: ticks('7/16 in') })),
    });
    const ends = pieces
      .filter(({ edges }) => edges.join() === 'B-C')
      .flatMap(({ shape }) => shape.outer.map(([x]) => x));
    expect(Math.max(...ends) - Math.min(...ends)).toBe(ticks('10 in'));
    expect(start.chosen.ends.along).toEqual([ticks('10 in'), ticks('10 in')]);
  });
});

describe.each(rooms)('sheets in a room %s in long', (_, surface, layout) => {
  test('have no chip sawn along walls that are told, whose gap is wider and still covered', () => {
    for (const { edge, gap } of layout.chips!.between) {
      expect(sawnIn(layout, edge)).toEqual([]);
      expect(gap).toBeGreaterThan(GAP);
      expect(gap).toBeLessThanOrEqual(MOST);
      expect(gapsIn(layout)).toContainEqual([edge, gap]);
    }
  });

  test('have chips sawn along others only where what is left of them is more than the gap may take', () => {
    const told = new Set(layout.chips!.between.map(({ edge }) => edge));
    for (const [edge, gap] of gapsIn(layout).filter(([id]) => !told.has(id))) {
      expect(gap).toBe(GAP);
      for (const part of sawnIn(layout, edge))
        expect(part * ticks('1 in') + JOINT).toBeGreaterThan(MOST - GAP);
    }
  });

  test('cover the field to their gaps, a joint apart, and their cuts close', () => {
    expect([judgeCover(judged(layout)), judgeDistance(judged(layout))]).toEqual([[], []]);
    expect(judgeCuts(layout, makeCuts(job as unknown as Job, layout), job.print.step)).toEqual([]);
  });

  test('have the same gaps turned, mirrored and renumbered', () => {
    const gaps = (of: SurfaceSpec) =>
      layOut(job, of)
        .layout.chips!.between.map(({ edge, gap }) => `${[...edge].sort().join('')} ${gap}`)
        .sort();
    for (const other of [renumbered(surface, 1), renumbered(surface, 2), mirrored(surface, 0)])
      expect(gaps(other)).toEqual(gaps(surface));
  });
});

test('in some of these rooms chips are spared, in others not', () => {
  const told = rooms.map(([, , { chips }]) => chips!.between.length);
  expect([told.some((count) => count > 0), told.some((count) => count < 4)]).toEqual([true, true]);
});

test('sheets that lie aslant to the walls, and tile without chips, keep their gaps', () => {
  const { layout } = layOut(job, room('101 in', '79 in', 30));
  expect(layout.chips!.between).toEqual([]);
  expect(layOut(base, room('101 in', '79 in')).layout.chips).toBeUndefined();
});

describe('a hole beside the edge of a sheet', () => {
  const at = (wall: string, distance: string) => ({ wall, distance: ticks(distance) });
  const holes = ['12', '13', '14', '15', '16', '17'].map((across) =>
    surfaceOf(rectangle(ticks('60 in'), ticks('60 in')), {
      obstacles: [
        {
          ...wallFacts(),
          name: 'pipe',
          shape: {
            kind: 'circle',
            diameter: ticks('3 in'),
            from: [at('D-A', '20 in'), at('A-B', `${across} in`)],
          },
        },
      ],
      over: { minWeb: ticks('3 in') },
    }),
  );
  const websOf = (floor: typeof job | typeof base) =>
    holes.flatMap((surface) => layOut(floor, surface).layout.faults.filter(({ code }) => code === 'web'));

  test('is no weak web: the edge is a joint between chips; of one tile it is', () => {
    expect(websOf(base).length).toBeGreaterThan(0);
    expect(websOf(job)).toEqual([]);
  });
});
