import { expect, test } from 'vitest';
import { demos, words } from './demos.ts';

interface Card {
  readonly number: number;
  readonly notes: readonly string[];
}

test('a card sends you to the template where its circle is swung from beyond the tile, and only there', () => {
  const told = demos.flatMap(({ packet, sheets }) =>
    sheets
      .filter(({ template }) => template === 'hard-cuts')
      .flatMap(({ data }) => (data as { cards: readonly Card[] }).cards)
      .map(({ number, notes }) => {
        const sends = words.say(packet.spec.print.crew[0]!)('sheet.hard-cuts.offTile');
        const offTile = (notes[0] ?? '').includes(sends);
        const cut = packet.surfaces.flatMap(({ cuts }) => cuts).find((one) => one.number === number)!;
        const { length, width } = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
        const inside = cut.circles.every(
          ({ centre: [x, y] }) => Math.abs(2 * x - length) <= length && Math.abs(2 * y - width) <= width,
        );
        return { offTile, inside };
      }),
  );
  expect(told.filter(({ offTile, inside }) => offTile === inside)).toEqual([]);
  expect(new Set(told.map(({ offTile }) => offTile))).toEqual(new Set([true, false]));
});
