import { expect, test } from 'vitest';
import { demos } from './demos.ts';

const { packet, sheets } = demos.find(({ slug }) => slug === 'linden-entry')!;
const data = sheets.find(({ template }) => template === 'tile-sheet')!.data as Record<
  'drawn' | 'last',
  readonly { readonly cuts: readonly number[]; readonly starts: readonly string[] }[]
>;
const told = [...data.drawn, ...data.last].flatMap(({ starts }) => starts);

test('a piece that was moved along its tile is told by where it begins from an edge of the tile', () => {
  expect(told.length).toBeGreaterThan(0);
  const { from } = packet.tiles.field!;
  for (const line of told) {
    const [, number, size] = /^No\. (\d+) starts ([\d.]+) mm from the left edge\.$/.exec(line)!;
    const cut = packet.surfaces[0]!.cuts.find((one) => one.number === Number(number))!;
    // Where the plan of tiles lays the corners of the cut: it is moved along its tile, not turned.
    const starts = from.flatMap(({ pieces }) =>
      pieces
        .filter((one) => one.cut === cut.number && one.turn === 0)
        .map(({ at }) => Math.min(...cut.shape.outer.map(([x]) => x + at[0])) / 320),
    );
    expect(
      starts.some((start) => Math.abs(start - Number(size)) <= 0.5),
      line,
    ).toBe(true);
  }
});
