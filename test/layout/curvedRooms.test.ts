import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job } from '../../src/job/Job.ts';
import { judgeCuts } from '../cuts/support/judgeCuts.ts';
import { curvedRoom } from '../support/curvedRoom.ts';
import { judged } from '../support/Judged.ts';
import { judgeCount } from '../support/judgeCount.ts';
import { judgeCover } from '../support/judgeCover.ts';
import { judgeDistance } from '../support/judgeDistance.ts';
import { layOut } from '../support/layOut.ts';
import { sameTally } from '../support/sameTally.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

/** 8 rooms in `npm test`, 1,000 in the long run. */
const ROOMS = Number(process.env.LONG === '1' ? 1000 : 8);
const rooms = fc.sample(curvedRoom, { seed: 20270302, numRuns: ROOMS });
const named = rooms.map((room, i) => [`${i} ${room.kind} ${room.surface.pattern.name}`, room] as const);

describe('random rooms with bowed and curved walls', () => {
  test.each(named)(
    '%s: pieces, joints and what is left cover the field and nothing else',
    (_, { job, surface }) => {
      expect(judgeCover(judged(layOut(job, surface).layout))).toEqual([]);
    },
  );

  test.each(named)('%s: a flood fill finds the same pieces', (_, { job, surface }) => {
    expect(judgeCount(judged(layOut(job, surface).layout))).toEqual([]);
  });

  test.each(named)('%s: no two pieces lie nearer than the joint', (_, { job, surface }) => {
    expect(judgeDistance(judged(layOut(job, surface).layout))).toEqual([]);
  });

  test.each(named)(
    '%s: every cut laid back on its tile is its piece, and every row closes',
    (_, { job, surface }) => {
      const { layout } = layOut(job, surface);
      const cuts = makeCuts(job as Job, layout);
      expect(judgeCuts(layout, cuts, job.print.step)).toEqual([]);
      for (const { terms, from, to } of cuts.rows) {
        const sum = (of: 'exact' | 'saw') => terms.reduce((total, term) => total + term[of], 0);
        expect([sum('exact'), sum('saw')]).toEqual(
          Array(2).fill(Math.hypot(to[0] - from[0], to[1] - from[1])),
        );
      }
    },
  );

  test.each(named)('%s: turning and renumbering change no tally', (_, room) => {
    sameTally(room, ...[1, 2, 3].map((by) => renumbered(room.surface, by)));
  });

  test.each(named)('%s: walking the mirrored room the other way changes no tally', (_, room) => {
    sameTally(room, mirrored(room.surface, room.job.tiles[0]!.length + room.job.joint));
  });
});
