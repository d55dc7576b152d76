import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { side } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { frameRoom } from '../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../src/layout/frame/Ground.ts';
import { turnOf } from '../../src/layout/frame/turnOf.ts';
import { layTiles } from '../../src/layout/pieces/layTiles.ts';
import { coverTheField, layoutOf } from '../support/coverTheField.ts';
import { cutsClose } from '../support/cutsClose.ts';
import { layOut } from '../support/layOut.ts';
import { patternedRooms } from '../support/patternedRoom.ts';
import { sameTally } from '../support/sameTally.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

/** Rooms of each pattern: 1 in `npm test`, 100 in the long run. */
const ROOMS = process.env.LONG === '1' ? 100 : 1;

/** Patterns that are their own mirror image; of the others the mirrored room has another floor. */
const MIRRORED = ['basketweave', 'hexagon', 'octagonAndDot', 'rhombus', 'chevron', 'pennyRound'];

describe.each(patternedRooms)('random rooms in %s', (name, rooms) => {
  const named = fc
    .sample(rooms, { seed: 20270303, numRuns: ROOMS })
    .map((room, i) => [`${i} ${room.kind}`, room] as const);

  coverTheField(named);

  test.each(named)(
    '%s: no corner of a piece lies outside its tile, so that no cut narrows a joint',
    (_, room) => {
      const outside = layoutOf(room).pieces.filter(({ shape, fullTile }) =>
        fullTile.some((from, i) => {
          const to = fullTile[(i + 1) % fullTile.length]!;
          return shape.outer.some((corner) => side(from, to, corner) < 0);
        }),
      );
      expect(outside.map(({ id }) => id)).toEqual([]);
    },
  );

  test.each(named)('%s: no two pieces have one name', (_, room) => {
    const ids = layoutOf(room).pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each(named)('%s: moved by a repeat it is the same floor', (_, { job, surface }) => {
    const { room, layout } = layOut(job, surface);
    const { pattern, origin } = layout;
    const openings = room.openings.map((one) => one.name);
    const ground = makeGround(
      frameRoom(room, turnOf(room, surface.pattern)),
      openings,
      surface,
      job.print.step,
    );
    const shapes = ([x, y]: readonly [number, number]) =>
      layTiles(ground, pattern, [origin[0] + x, origin[1] + y])
        .border.map(({ shape }) => JSON.stringify(shape.outer))
        .sort();
    expect(shapes(pattern.a)).toEqual(shapes([0, 0]));
    expect(shapes(pattern.b)).toEqual(shapes([0, 0]));
  });

  const looks = (surface: SurfaceSpec, module: number) => [
    ...(process.env.LONG === '1' ? [2, 3] : []).map((by) => renumbered(surface, by)),
    renumbered(surface, 1),
    ...(MIRRORED.includes(name) ? [mirrored(surface, module)] : []),
  ];

  test.each(named)('%s: seen otherwise it starts the same, or as well along the walls', (_, room) => {
    const { length } = room.job.tiles[0]!;
    sameTally(room, ...looks(room.surface, length + room.job.joint));
  });

  cutsClose(named);
});
