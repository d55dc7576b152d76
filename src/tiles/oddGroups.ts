import type { Group } from './Prices.ts';
import type { Relaxed } from './relaxedTiles.ts';

/**
 * Groups that the programme's answer serves by less than whole tiles would: classes that hang together by tiles taken in parts,
 * whose pieces are odd in number.
 */
export function oddGroups({ taken }: Relaxed, counts: readonly number[]): readonly Group[] {
  const parts = taken.filter(({ amount }) => Math.abs(amount - Math.round(amount)) > 0.01);
  const groupOf = new Map<number, number[]>();
  for (const { tile } of parts) {
    const ids = [...new Set(tile.map(({ of }) => of.id))];
    const joined = [...new Set(ids.flatMap((id) => groupOf.get(id) ?? [id]))];
    for (const id of joined) groupOf.set(id, joined);
  }
  return [...new Set(groupOf.values())]
    .map((group) => group.sort((a, b) => a - b))
    .filter((group) => group.reduce((sum, id) => sum + counts[id]!, 0) % 2 === 1);
}
