import { expect, test } from 'vitest';
import type { Layout } from '../../src/layout/Layout.ts';
import { judged } from './Judged.ts';
import { judgeCount } from './judgeCount.ts';
import { judgeCover } from './judgeCover.ts';
import { judgeDistance } from './judgeDistance.ts';
import { layOut } from './layOut.ts';
import type { RandomRoom } from './randomRoom.ts';

/** The layout of a room. */
export const layoutOf = ({ job, surface }: RandomRoom): Layout => layOut(job, surface).layout;

/** What holds of every layout, as judges see it that know nothing of how it was made. */
export function coverTheField(named: readonly (readonly [string, RandomRoom])[]): void {
  test.each(named)('%s: pieces, joints and what is left cover the field and nothing else', (_, room) => {
    expect(judgeCover(judged(layoutOf(room)))).toEqual([]);
  });

  test.each(named)('%s: a flood fill finds the same pieces', (_, room) => {
    expect(judgeCount(judged(layoutOf(room)))).toEqual([]);
  });

  test.each(named)('%s: no two pieces lie nearer than the joint', (_, room) => {
    expect(judgeDistance(judged(layoutOf(room)))).toEqual([]);
  });
}
