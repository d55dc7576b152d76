import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../../src/job/Job.ts';
import { frameRoom } from '../../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../../src/layout/frame/Ground.ts';
import { turnOf } from '../../../src/layout/frame/turnOf.ts';
import { wallDirections } from '../../../src/layout/start/search/wallDirections.ts';
import { makePattern } from '../../../src/pattern/index.ts';
import type { Pattern } from '../../../src/pattern/Pattern.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import { patternJobs } from '../../packet/support/patternFloors.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../../support/surfaceOf.ts';
import { renumbered } from '../../support/transformSurface.ts';

const joint = ticks('1/8 in');
const plank = jobOf(ticks('20 in'), ticks('4 in'), joint);
const square = jobOf(ticks('15 1/2 in'), ticks('15 1/2 in'), joint);
type Tiles = typeof plank;

function readied({ tiles }: Tiles, surface: SurfaceSpec) {
  const made = makeRoom(surface);
  if ('problems' in made) throw new Error('room refused');
  const pattern = makePattern(surface.pattern, tiles, joint);
  const frame = frameRoom(made.room, turnOf(made.room, surface.pattern));
  return { pattern, directions: wallDirections(makeGround(frame, [], surface), pattern) };
}

/** Steps from row to row of tiles as a wall sees them: how far apart the tiles' first corners stand along its normal, near the middle of many. */
function stepsAlong({ a, b, tiles }: Pattern, [nx, ny]: Point): number[] {
  const counts = Array.from({ length: 41 }, (_, i) => i - 20);
  const levels = counts.flatMap((i) =>
    counts.flatMap((j) =>
      tiles.map(({ ring }) => {
        const [x, y] = ring[0]!;
        return (i * a[0] + j * b[0] + x) * nx + (i * a[1] + j * b[1] + y) * ny;
      }),
    ),
  );
  const near = levels.filter((level) => Math.abs(level) < 2 * a[0]).sort((one, other) => one - other);
  return near.slice(1).flatMap((level, i) => (level - near[i]! > ROUNDING ? [level - near[i]!] : []));
}

/** Tiles of a repeat stand in whole ticks. */
const ROUNDING = 4;

// Most of these walls lie along no direction in which the planks soon repeat: the nearest one is taken for them.
const turns = [0, 22.5, -22.5, 30, -30, 45, 67.5];
const roomsOf = (what: string, tiles: Tiles, numerator: number, denominator: number) =>
  [40, 61, 87, 104, 133].flatMap((width) =>
    turns.map((turnedDeg) => {
      const offset = { numerator, denominator };
      const pattern = { name: 'running', offset, stepping: 'stepping', turnedDeg } as const;
      const surface = surfaceOf(rectangle(ticks(`${width} in`), ticks('93 in')), { pattern });
      return [`${what}, ${width} in wide, turned ${turnedDeg}`, tiles, surface] as const;
    }),
  );
const rooms = [...roomsOf('planks', plank, 1, 3), ...roomsOf('squares', square, 2, 5)];

describe('the directions along which walls are read', () => {
  test.each(rooms)('%s: are as far apart from row to row as the tiles are', (_, tiles, surface) => {
    for (const first of [0, 1, 2, 3]) {
      const { pattern, directions } = readied(tiles, renumbered(surface, first));
      for (const { normal, spacing } of directions) {
        const steps = stepsAlong(pattern, normal);
        expect(steps.length).toBeGreaterThan(0);
        expect(steps.filter((step) => Math.abs(step - spacing) > ROUNDING)).toEqual([]);
      }
    }
  });

  test.each(rooms)('%s: are the same from another first corner', (_, tiles, surface) => {
    const told = [0, 1, 2, 3].map((first) =>
      readied(tiles, renumbered(surface, first)).directions.map(({ normal, readings }) => [
        normal.map((part) => Math.abs(part).toFixed(6)),
        readings.length,
      ]),
    );
    for (const other of told) expect(other).toEqual(told[0]);
  });
});

describe('a wall of a pattern in no courses', () => {
  const floors = patternJobs().filter(([name]) =>
    ['four sizes', 'double herringbone', 'windmill'].includes(name),
  );

  test.each(floors)('that lies along its axes is read straight across them in %s', (_, job) => {
    const surface = surfaceOf(rectangle(ticks('97 in'), ticks('131 in')), {
      pattern: job.surfaces[0]!.pattern,
    });
    const made = makeRoom(surface);
    if ('problems' in made) throw new Error('room refused');
    const pattern = makePattern(surface.pattern, job.tiles, job.joint);
    const ground = makeGround(frameRoom(made.room, turnOf(made.room, surface.pattern)), [], surface);
    const leans = wallDirections(ground, pattern).map(({ normal }) => Math.min(...normal.map(Math.abs)));
    expect(Math.max(...leans)).toBeLessThan(1e-9);
  });
});
