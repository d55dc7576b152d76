import { describe, expect, test } from 'vitest';
import { narrowness, type Point } from '../../../src/geometry/index.ts';
import { frameRoom } from '../../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../../src/layout/frame/Ground.ts';
import { turnOf } from '../../../src/layout/frame/turnOf.ts';
import { layTiles } from '../../../src/layout/pieces/layTiles.ts';
import { patternJobs } from '../../packet/support/patternFloors.ts';
import { chance } from '../../support/chance.ts';
import { judgeTiles } from '../../support/judgeTiles.ts';
import { layOut } from '../../support/layOut.ts';

const jobs = patternJobs().filter(([name]) => !name.includes('checker'));

/** Starts drawn by chance all over the repeat, beside which the chosen one is held. */
const DRAWN = 40;
const FOOT = 97536;
/** What a search may let a start be worse by, in each of two directions, and what so few points of a wall may miss. */
const [STRIPS, HALVES] = [2 * 8128 + 0.3 * FOOT, 2 * 3 * 8128 + 0.3 * FOOT] as const;

describe.each(jobs)('the start of %s', (_, job) => {
  const surface = job.surfaces[0]!;
  const { layout, room } = layOut(job, surface);
  const ground = makeGround(frameRoom(room, turnOf(room, surface.pattern)), ['hall'], surface);
  const { a, b } = layout.pattern;
  const { even } = chance(20270511);
  const places = Array.from({ length: DRAWN }, (): Point => {
    const [u, v] = [even(), even()];
    return [Math.round(u * a[0] + v * b[0]), Math.round(u * a[1] + v * b[1])];
  });
  const drawn = places.map((place) => judgeTiles(ground, layout.pattern, place));
  const chosen = judgeTiles(ground, layout.pattern, layout.origin, 2);

  test(`has as little wall with strips as the best of ${DRAWN} drawn by chance`, () => {
    expect(chosen.strips).toBeLessThan(Math.min(...drawn.map(({ strips }) => strips)) + STRIPS);
  });

  test('has cuts that lack as little of half a tile as the best of those with as little wall with strips', () => {
    const few = drawn.filter(({ strips }) => strips <= chosen.strips);
    expect(chosen.halves).toBeLessThan(Math.min(...few.map(({ halves }) => halves)) + HALVES);
  });

  /** The smallest piece in sight as a share of its tile; 0 where a cut is too thin to be sawn. */
  function smallestAt(place: Point): number {
    const cut = layTiles(ground, layout.pattern, place).border.filter(({ whole }) => !whole);
    if (cut.some(({ shape }) => narrowness(shape.outer) < ground.minWeb / 2)) return 0;
    return Math.min(...cut.filter(({ seen }) => seen !== 'hidden').flatMap(({ shares }) => shares));
  }

  test('has as large a smallest piece as those as good along the walls, to a sixteenth of a tile', () => {
    const asGood = places.filter((_, i) => {
      const { strips, halves } = drawn[i]!;
      return strips <= chosen.strips && halves <= chosen.halves;
    });
    expect(layout.start.chosen.smallestShare).toBeGreaterThan(
      Math.max(0, ...asGood.map(smallestAt)) - 1 / 16,
    );
  });
});
