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

  test('stand in rows that bear the letters and the number of the pieces they hold', () => {
    for (const { id, axis, terms } of rows)
      for (const piece of terms.filter(({ what }) => what === 'piece')) {
        const [, quarter, column, row] = /^([KLMN])(\d+)-(\d+)/.exec(piece.id)!;
        const [, letters, number] = /^(\D+)(\d+)/.exec(id)!;
        expect(letters, `${piece.id} in ${id}`).toContain(quarter);
        expect(number, `${piece.id} in ${id}`).toBe(axis === 'along' ? row : column);
      }
  });
});
