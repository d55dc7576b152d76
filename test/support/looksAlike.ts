import { expect, test } from 'vitest';
import type { RandomRoom } from './randomRoom.ts';
import { sameTally } from './sameTally.ts';
import { mirrored, renumbered } from './transformSurface.ts';

/** Tests that rooms turned, renumbered and mirrored have the same tally, and that fewer than `most` get another start as good. */
export function looksAlike(named: readonly (readonly [string, RandomRoom])[], most: number): void {
  const otherwise = new Set<string>();
  const look = (name: string, same: boolean) => same || otherwise.add(name);

  test.each(named)('%s: turning and renumbering change no tally', (name, room) => {
    look(name, sameTally(room, ...[1, 2, 3].map((by) => renumbered(room.surface, by))));
  });

  test.each(named)('%s: walking the mirrored room the other way changes no tally', (name, room) => {
    look(name, sameTally(room, mirrored(room.surface, room.job.tiles[0]!.length + room.job.joint)));
  });

  test(`fewer than ${Math.ceil(most)} get another start that is as good along the walls`, () => {
    if (process.env.LONG === '1') console.log(`${named.length} rooms, ${otherwise.size} get another start`);
    expect(otherwise.size).toBeLessThan(most);
  });
}
