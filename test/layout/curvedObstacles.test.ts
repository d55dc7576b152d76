import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job, ObstacleSpec } from '../../src/job/Job.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { judgeCuts } from '../cuts/support/judgeCuts.ts';
import { judged } from '../support/Judged.ts';
import { judgeCount } from '../support/judgeCount.ts';
import { judgeCover } from '../support/judgeCover.ts';
import { judgeDistance } from '../support/judgeDistance.ts';
import { layOut } from '../support/layOut.ts';
import { type RandomRoom, randomRoom } from '../support/randomRoom.ts';
import { sameTally } from '../support/sameTally.ts';
import { wallFacts } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const inches = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((n) => n * 508);

/** A hearth with four corners whose sides may bulge out, up to half a circle, or be hollow. */
const hearth = fc.record({
  at: fc.tuple(inches(16, 30), inches(16, 30)),
  size: fc.tuple(inches(12, 30), inches(12, 30)),
  lean: inches(0, 3),
  bends: fc.array(fc.constantFrom(0, 0, 0.03, 0.2, 0.5, -0.1), { minLength: 4, maxLength: 4 }),
});

const rooms = fc
  .sample(
    fc
      .record({ room: randomRoom, hearth })
      .map(
        ({
          room,
          hearth: {
            at: [x, y],
            size: [w, h],
            lean,
            bends,
          },
        }): RandomRoom => {
          const points = [
            [x, y],
            [x + w, y + lean],
            [x + w, y + h],
            [x, y + h],
          ] as const;
          const sides = [w, h, w, h];
          const shape: ObstacleSpec['shape'] = {
            kind: 'polygon',
            walls: [room.surface.walls.at(-1)!.id, 'A-B'],
            points,
            rises: bends.map((of, i) => Math.round(of * sides[i]!)),
          };
          const one: ObstacleSpec = {
            ...wallFacts({ gapMax: 3 * 1016 }),
            name: 'hearth',
            meets: 'hearth',
            shape,
          };
          return { ...room, surface: { ...room.surface, obstacles: [...room.surface.obstacles, one] } };
        },
      )
      .filter(({ surface }) => 'room' in makeRoom(surface)),
    { seed: 20270303, numRuns: process.env.LONG === '1' ? 200 : 8 },
  )
  .map((room, i) => [`${i} ${room.kind} ${room.surface.pattern.name}`, room] as const);

describe('random rooms with an obstacle whose sides are curved', () => {
  test.each(rooms)('%s: what is laid is what must be', (_, { job, surface }) => {
    const { layout } = layOut(job, surface);
    const one = judged(layout);
    expect([...judgeCover(one), ...judgeCount(one), ...judgeDistance(one)]).toEqual([]);
    expect(judgeCuts(layout, makeCuts(job as Job, layout), job.print.step)).toEqual([]);
  });

  test.each(rooms)('%s: looked at differently nothing changes', (_, room) => {
    const module = room.job.tiles[0]!.length + room.job.joint;
    sameTally(room, ...[1, 2, 3].map((by) => renumbered(room.surface, by)), mirrored(room.surface, module));
  });
});
