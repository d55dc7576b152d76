import { describe, expect, test } from 'vitest';
import { demos } from '../sheets/demos.ts';

const floors = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.map((surface) => [slug, surface] as const),
);

/** Lengths of the pieces of a row, from end to end. */
const lengths = ({ terms }: (typeof floors)[number][1]['rows'][number]) =>
  terms.filter(({ what }) => what === 'piece').map(({ exact }) => exact);

describe.each(floors)('the spaces to be found on the floor of %s', (_, { zones, rows }) => {
  test('are measured from a tile of full length, at rows that have one', () => {
    for (const { row } of zones.flatMap(({ found }) => found)) {
      const own = rows.filter(({ id }) => id === row);
      const full = Math.max(...rows.filter(({ axis }) => axis === own[0]!.axis).flatMap(lengths));
      expect(Math.max(...own.flatMap(lengths))).toBeGreaterThan(full - 5);
    }
  });
});
