import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface ZoneData {
  readonly found: readonly { readonly lines: readonly { rows: string; edge: string; space: string }[] }[];
}

/** Every row that a line of found spaces speaks of, those between a first and a last too. */
function spokenOf(rows: string, all: readonly string[]): readonly string[] {
  return rows.split(', ').flatMap((part, i, parts) => {
    const [first, last] = part.split(' … ') as [string, string?];
    if (!last) return [first];
    const before = parts[i - 1];
    const step = before && !before.includes(' … ') && all.indexOf(first) - all.indexOf(before) === 2 ? 2 : 1;
    return all.slice(all.indexOf(first), all.indexOf(last) + 1).filter((_, j) => j % step === 0);
  });
}

const zones = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.flatMap(({ zones }) =>
    zones.map((zone) => {
      const sheet = sheets.find(({ name }) => name === `zone-${zone.number}`)!;
      return { slug, zone, lines: (sheet.data as ZoneData).found.flatMap(({ lines }) => lines) };
    }),
  ),
);

describe('the rows named beside a found space', () => {
  test.each(zones)('are at no other space of the same edge: $slug zone $zone.number', ({ zone, lines }) => {
    for (const edge of new Set(lines.map((line) => line.edge))) {
      const beside = lines.filter((line) => line.edge === edge);
      const named = new Set(beside.flatMap(({ rows }) => rows.split(/, | … /)));
      const order = [...new Set(zone.found.map(({ row }) => row))];
      // Rows at the edge: those named and those between them at any one space.
      const all = order.filter(
        (row) => named.has(row) || beside.some(({ rows }) => spokenOf(rows, order).includes(row)),
      );
      const spoken = beside.flatMap(({ rows, space }) => spokenOf(rows, all).map((row) => ({ row, space })));
      const both = spoken.filter(({ row, space }) =>
        spoken.some((other) => other.row === row && other.space !== space),
      );
      const twice = zone.found.filter(({ row }) => both.some((one) => one.row === row)).map(({ row }) => row);
      // A row that ends twice at one edge, before and behind something, has two spaces there.
      expect(twice.filter((row, _, list) => list.indexOf(row) === list.lastIndexOf(row))).toEqual([]);
    }
  });
});
