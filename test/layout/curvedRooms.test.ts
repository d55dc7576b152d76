import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job } from '../../src/job/Job.ts';
import { judgeCuts } from '../cuts/support/judgeCuts.ts';
import { coverTheField, layoutOf } from '../support/coverTheField.ts';
import { curvedRoom } from '../support/curvedRoom.ts';
import { looksAlike } from '../support/looksAlike.ts';

/** 8 rooms in `npm test`, 1,000 in the long run; `PART=3/10` takes the third tenth of them. */
const ROOMS = Number(process.env.LONG === '1' ? 1000 : 8);
const [part = 1, parts = 1] = (process.env.PART ?? '1/1').split('/').map(Number);
const first = Math.floor((ROOMS * (part - 1)) / parts);
const rooms = fc
  .sample(curvedRoom, { seed: 20270302, numRuns: ROOMS })
  .slice(first, Math.floor((ROOMS * part) / parts));
const named = rooms.map(
  (room, i) => [`${first + i} ${room.kind} ${room.surface.pattern.name}`, room] as const,
);

describe('random rooms with bowed and curved walls', () => {
  coverTheField(named);

  test.each(named)('%s: every cut laid back on its tile is its piece, and every row closes', (_, room) => {
    const layout = layoutOf(room);
    const cuts = makeCuts(room.job as Job, layout);
    expect(judgeCuts(layout, cuts, room.job.print.step)).toEqual([]);
    for (const { terms, from, to } of cuts.rows) {
      const sum = (of: 'exact' | 'saw') => terms.reduce((total, term) => total + term[of], 0);
      expect([sum('exact'), sum('saw')]).toEqual(Array(2).fill(Math.hypot(to[0] - from[0], to[1] - from[1])));
    }
  });

  looksAlike(named, Math.max(2, rooms.length / 5));
});
