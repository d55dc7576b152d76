import { describe, expect, test } from 'vitest';
import { layOut } from '../../support/layOut.ts';
import type { SurfaceOptions } from '../../support/surfaceOf.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../../support/surfaceOf.ts';

const job = jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in'));
const LEAN = ticks('21/32 in');

/** A room of 96 in by 60 in whose ends lean by 21/32 in, as its two diagonals of 113 3/4 in and 112 5/8 in say: arithmetic. */
function tapersOf(options: SurfaceOptions = {}) {
  const corners = [
    [0, 0],
    [ticks('96 in'), 0],
    [ticks('96 in') + LEAN, ticks('60 in')],
    [LEAN, ticks('60 in')],
  ] as const;
  return layOut(job, surfaceOf(corners, options)).layout.tapers;
}

/** A start that leaves a cut of this size at wall D-A. */
const cutOf = (size: string): SurfaceOptions => ({
  start: { along: { kind: 'cut', size: ticks(size), at: 'D-A' } },
});

const wallOf = (tapers: ReturnType<typeof tapersOf>, edge: string) =>
  tapers.walls.find((wall) => wall.edge === edge)!;

describe('what a job sets otherwise', () => {
  test('the share of a cut from which a taper shows', () => {
    const shows = (taperShows: number) =>
      wallOf(tapersOf({ ...cutOf('4 in'), over: { taperShows } }), 'D-A').shows;
    expect([shows(0.1), shows(0.5)]).toEqual([true, false]);
  });

  test('how much a focal wall counts', () => {
    const facts = { walls: { 'D-A': { seen: 'focal' } } } as const;
    const now = (focalWeight: number) => tapersOf({ ...facts, over: { focalWeight } }).ways[0]!.worst;
    expect(now(6) / now(2)).toBeCloseTo(3, 3);
  });
});

describe('a room that leans', () => {
  const tapers = tapersOf();

  test('tapers at both ends by its lean, an eighth a tile', () => {
    for (const edge of ['B-C', 'D-A']) {
      expect(Math.abs(wallOf(tapers, edge).runsOff - LEAN)).toBeLessThanOrEqual(2);
      expect(wallOf(tapers, edge).perTile / ticks('1/8 in')).toBeCloseTo(1, 1);
    }
  });

  test('is in line with the wall that is obeyed', () => {
    expect(tapers.obeyed).toBe('A-B');
    expect(tapers.ways[0]).toMatchObject({ kind: 'now', edges: ['A-B', 'C-D'], byDeg: 0 });
    expect(wallOf(tapers, 'A-B').runsOff).toBe(0);
  });

  test('runs off at the long walls instead when square to an end', () => {
    const obey = tapers.ways.find(({ edges }) => edges.includes('B-C'))!;
    expect(obey.byDeg).toBeCloseTo((-Math.atan(21 / 32 / 60) * 180) / Math.PI, 3);
    expect(obey.runsOff[0]! / ((LEAN * 96) / 60)).toBeCloseTo(1, 3);
  });
});

// Common practice, no source: 5 mm hides on a cut of 140 mm and is a third of one of 15 mm.
describe('the same taper', () => {
  test.each([
    ['8 in', false, 0.085],
    ['1 in', true, 0.977],
  ])('on a cut of %s: shows %s', (size, shows, share) => {
    const wall = wallOf(tapersOf(cutOf(size)), 'D-A');
    expect(wall.shows).toBe(shows);
    expect(wall.ofCutShare).toBeCloseTo(share, 1);
    expect(wall.wide! - wall.narrow!).toBeLessThanOrEqual(LEAN + 2);
  });

  test('does not show at a wall that nobody sees', () => {
    const tapers = tapersOf({ ...cutOf('1 in'), walls: { 'D-A': { seen: 'hidden' } } });
    expect(wallOf(tapers, 'D-A').shows).toBe(false);
  });
});

describe('the advice', () => {
  test('is a cut wide enough that the taper is a tenth of it', () => {
    const { advice } = tapersOf(cutOf('1 in'));
    const [{ code, figures }] = advice as [(typeof advice)[0]];
    expect(code).toBe('taper.wideCut');
    expect(figures.edge).toBe('D-A');
    expect(Math.abs(Number(figures.cut) - 10 * LEAN)).toBeLessThanOrEqual(20);
  });

  test('is another wall, when the one that tapers is looked at and the others are out of sight', () => {
    const hidden = { seen: 'hidden' } as const;
    const { advice } = tapersOf({ ...cutOf('1 in'), walls: { 'A-B': hidden, 'B-C': hidden, 'C-D': hidden } });
    expect(advice.at(-1)).toMatchObject({ code: 'taper.obey', figures: { edge: 'B-C D-A' } });
  });

  test('is an angle between, when all walls are looked at alike', () => {
    const { advice, ways } = tapersOf(cutOf('1 in'));
    expect(advice.at(-1)!.code).toBe('taper.between');
    const share = ways.find(({ kind }) => kind === 'share')!;
    expect(share.worst).toBeLessThan(ways[0]!.worst);
    expect(Math.abs(share.runsOff[0]! - share.runsOff[2]!)).toBeLessThanOrEqual(2);
  });

  test('is none for a square room', () => {
    const { advice, walls } = layOut(job, surfaceOf(rectangle(ticks('100 in'), ticks('90 in')))).layout
      .tapers;
    expect(advice).toEqual([]);
    expect(walls.every(({ runsOff }) => runsOff === 0)).toBe(true);
  });
});
