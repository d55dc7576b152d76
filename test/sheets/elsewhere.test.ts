import { expect, test } from 'vitest';
import { ringCentroid } from '../../src/geometry/index.ts';
import { tileOutline } from '../../src/pattern/index.ts';
import { demos } from './demos.ts';

interface Card {
  readonly number: number;
  readonly elsewhere: string;
}

/** How far the middle of a tile lies from its own place once it is turned about its corner and moved, in ticks. */
function middleOff([x, y]: readonly [number, number], turn: number, at: readonly [number, number]): number {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return Math.hypot(x * cos - y * sin + at[0] - x, x * sin + y * cos + at[1] - y);
}

test('a card tells in which tiles its piece lies at another place, and only there', () => {
  const told = demos.flatMap(({ slug, packet, sheets }) =>
    sheets
      .filter(({ template }) => template === 'hard-cuts')
      .flatMap(({ data }) => (data as { cards: readonly Card[] }).cards)
      .map(({ number, elsewhere }) => {
        const cut = packet.surfaces.flatMap(({ cuts }) => cuts).find((one) => one.number === number)!;
        const middle = ringCentroid(tileOutline(packet.spec.tiles.find(({ key }) => key === cut.tile)!));
        const moved = packet.tiles[cut.tile]!.from.filter(
          ({ pieces }) =>
            pieces.length > 1 &&
            pieces.some(
              ({ piece, turn, at }) => cut.pieces.includes(piece) && middleOff(middle, turn, at) > 10,
            ),
        );
        return { card: `${slug} ${number}`, elsewhere, moved: moved.map(({ tile }) => tile).join(' · ') };
      }),
  );
  expect(told.filter(({ elsewhere, moved }) => elsewhere !== moved)).toEqual([]);
  expect(told.some(({ moved }) => moved !== '')).toBe(true);
});
