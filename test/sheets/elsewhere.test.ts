import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { printedSizes } from '../../src/drawing/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { cutOnCard } from '../../src/sheets/cutOnCard.ts';
import { elsewhere, shownSlide } from '../../src/sheets/elsewhere.ts';
import { demos } from './demos.ts';

interface Card {
  readonly number: number;
  readonly elsewhere: string;
  readonly drawing: string;
}

type Place = Packet['tiles'][string]['from'][number]['pieces'][number];

/** Where a plan of tiles lays a point of a cut, the tile then turned back about its middle: a tile that is turned as a whole is the same tile. */
function laid([x, y]: Point, { turn, at }: Place, [midX, midY]: Point): Point {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const [u, v] = [x * cos - y * sin + at[0] - midX, x * sin + y * cos + at[1] - midY];
  return [u * cos + v * sin + midX, v * cos - u * sin + midY];
}

const hard = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.flatMap((surface) =>
    surface.cuts.filter(isHard).map((cut) => ({ slug, number: cut.number, packet, sheets, surface, cut })),
  ),
);

describe.each(hard)('the card of $slug cut $number', ({ packet, surface, cut }) => {
  const shown = cutOnCard(surface, packet, cut);
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;

  test('has the corners of its piece where the tile sheet has them', () => {
    const middle: Point = [tile.length / 2, tile.width / 2];
    const places = packet.tiles[cut.tile]!.from.flatMap(({ pieces }) =>
      pieces.filter(({ piece }) => piece === cut.pieces[0]),
    );
    expect(places).toHaveLength(1);
    const [place] = places as [Place];
    for (const [i, point] of cut.shape.outer.entries()) {
      const [x, y] = laid(point, place, middle);
      const [u, v] = shown.shape.outer[i]!;
      expect(Math.hypot(x - u, y - v)).toBeLessThan(6);
    }
  });

  test('measures from the side of the tile that each size is told from', () => {
    const sides = { left: [0, 0], right: [0, tile.length], bottom: [1, 0], top: [1, tile.width] } as const;
    for (const { from, at } of shown === cut ? [] : printedSizes(shown)) {
      if (from === 'none') continue;
      const [axis, side] = sides[from];
      expect(at.some((end) => Math.abs(end[axis] - side) <= 8)).toBe(true);
    }
  });
});

test('the card of a piece that begins 313 mm from an edge on the tile sheet gives what is left of that edge from the other end', () => {
  // The tile is 597 mm long: 597 less 313 is 284, rounded so that nothing becomes too large: arithmetic.
  const cards = demos
    .find(({ slug }) => slug === 'linden-entry')!
    .sheets.filter(({ template }) => template === 'hard-cuts')
    .flatMap(({ data }) => (data as { cards: readonly Card[] }).cards);
  const drawn = (number: number) => cards.find((one) => one.number === number)!.drawing;
  expect(drawn(16)).toMatch(/>28[34]</);
  expect(drawn(18)).toMatch(/>28[45]</);
});

describe('a cut of several pieces', () => {
  const from = (places: readonly (readonly [string, number, number])[]) =>
    places.map(([tile, dx, turn], i) => ({
      tile,
      pieces: [
        {
          piece: `K1-${i}`,
          cut: 1,
          at: (turn === 180 ? [600 - dx, 300] : [dx, 0]) as Point,
          turn: turn as 0,
        },
      ],
    }));
  const floor = { name: 'floor' };
  const asked = (places: readonly (readonly [string, number, number])[]) =>
    [
      {
        surfaces: [floor],
        tiles: { field: { from: from(places) } },
        spec: { tiles: [{ key: 'field', length: 600, width: 300 }] },
      } as unknown as Packet,
      floor,
      { tile: 'field', pieces: places.map((_, i) => `K1-${i}`) } as never,
    ] as const;

  test('is shown where most of them lie, and its card tells the tiles in which others lie', () => {
    const all = asked([['T1', 0, 0], ['T2', 100, 0], ['T3', 100, 180], ['T4', 0, 180], ['T5', 100, 0]]); // biome-ignore format: tiles on a line
    expect(shownSlide(...all)).toEqual([100, 0]);
    expect(elsewhere(...all)).toEqual(['T1', 'T4']);
  });

  test('of as many is shown where the tile has it that is sawn first', () => {
    const all = asked([['T1', 50, 0], ['T2', 0, 0]]); // biome-ignore format: tiles on a line
    expect(shownSlide(...all)).toEqual([50, 0]);
    expect(elsewhere(...all)).toEqual(['T2']);
  });

  test('of one of several floors goes by the name that its pieces bear in the plans of tiles', () => {
    const [packet, , cut] = asked([['T1', 0, 0], ['T2', 100, 0], ['T3', 100, 0]]); // biome-ignore format: tiles on a line
    const named = packet.tiles.field!.from.map(({ tile, pieces }) => ({
      tile,
      pieces: pieces.map((one) => ({ ...one, piece: `bath:${one.piece}` })),
    }));
    const floors = [{ name: 'hall' }, { name: 'bath' }];
    const several = { ...packet, surfaces: floors, tiles: { field: { from: named } } } as unknown as Packet;
    expect(shownSlide(several, floors[1]!, cut)).toEqual([100, 0]);
    expect(elsewhere(several, floors[1]!, cut)).toEqual(['T1']);
    expect(elsewhere(several, floors[0]!, cut)).toEqual([]);
  });

  test('that only lies turned in its tile is shown as it is', () => {
    const all = asked([['T1', 0, 180]]);
    expect(shownSlide(...all)).toEqual([0, 0]);
    expect(elsewhere(...all)).toEqual([]);
  });
});
