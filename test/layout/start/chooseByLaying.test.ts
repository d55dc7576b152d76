import { describe, expect, test } from 'vitest';
import { narrowness } from '../../../src/geometry/index.ts';
import { frameRoom } from '../../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../../src/layout/frame/Ground.ts';
import { turnOf } from '../../../src/layout/frame/turnOf.ts';
import { layTiles } from '../../../src/layout/pieces/layTiles.ts';
import { patternJobs } from '../../packet/support/patternFloors.ts';
import { chance } from '../../support/chance.ts';
import { layOut } from '../../support/layOut.ts';

const names = ['herringbone at 45 degrees', 'basketweave', 'hexagon', 'four sizes', 'octagon and dot'];
const jobs = patternJobs().filter(([name]) => names.includes(name));

/** Starts drawn by chance all over the repeat, beside which the chosen one is held. */
const DRAWN = 60;

describe.each(jobs)('the start of %s', (_, job) => {
  const surface = job.surfaces[0]!;
  const { layout, room } = layOut(job, surface);
  const ground = makeGround(frameRoom(room, turnOf(room, surface.pattern)), ['hall'], surface);

  /** The smallest piece in sight as a share of its tile; 0 where a cut is too thin to be sawn. */
  function smallestAt(x: number, y: number): number {
    const cut = layTiles(ground, layout.pattern, [x, y]).border.filter(({ whole }) => !whole);
    if (cut.some(({ shape }) => narrowness(shape.outer) < ground.minWeb / 2)) return 0;
    return Math.min(...cut.filter(({ seen }) => seen !== 'hidden').flatMap(({ shares }) => shares));
  }

  test(`has as large a smallest piece as the best of ${DRAWN} drawn by chance, to a sixteenth of a tile`, () => {
    const { a, b } = layout.pattern;
    const { even } = chance(20270511);
    const shares = Array.from({ length: DRAWN }, () => {
      const [u, v] = [even(), even()];
      return smallestAt(Math.round(u * a[0] + v * b[0]), Math.round(u * a[1] + v * b[1]));
    });
    expect(layout.start.chosen.smallestShare).toBeGreaterThan(Math.max(...shares) - 1 / 16);
  });
});
