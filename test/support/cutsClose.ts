import { expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Job } from '../../src/job/Job.ts';
import { judgeCuts } from '../cuts/support/judgeCuts.ts';
import { layoutOf } from './coverTheField.ts';
import type { RandomRoom } from './randomRoom.ts';

/** What holds of the cuts of every layout: each is its piece, and the parts of each row add up to its length, in ticks and as printed. */
export function cutsClose(named: readonly (readonly [string, RandomRoom])[]): void {
  test.each(named)('%s: every cut laid back on its tile is its piece, and every row closes', (_, room) => {
    const layout = layoutOf(room);
    const cuts = makeCuts(room.job as Job, layout);
    expect(judgeCuts(layout, cuts, room.job.print.step)).toEqual([]);
    for (const { terms, from, to } of cuts.rows) {
      const sum = (of: 'exact' | 'saw') => terms.reduce((total, term) => total + term[of], 0);
      expect([sum('exact'), sum('saw')]).toEqual(Array(2).fill(Math.hypot(to[0] - from[0], to[1] - from[1])));
    }
  });
}
