import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import { cardScale, drawCard, type Space } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { pageSpace } from './drawingSpace.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Which cuts do you make first, while there are spares? A card for each notch, pocket, hole and curve, and each point of several saw lines. */
export const hardCuts: Sheet = {
  name: 'hard-cuts',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const { packet } = context;
    const tiles = packet.spec.tiles;
    const ratio = cardScale(tiles, packet.spec.print.system);
    const cards = packet.surfaces.flatMap((surface) =>
      surface.cuts.filter(isHard).map((cut) => card(context, surface, cut, ratio)),
    );
    if (cards.length === 0) return [];
    const low = areLow(cards, pageSpace(packet.spec.print.paper, 'portrait').heightMm);
    const placed = low ? cards.map((one) => ({ ...one, spans: [] })) : cards;
    return [{ scale: `1:${ratio}`, data: { cards: placed, low } }];
  },
};

/** Cards on a page of the usual height. */
const A_PAGE = 6;

/** A low card: how high it is at least, what stands round its drawing, and what it holds, in mm and pieces. */
const LOW = { leastMm: 55.6, roundMm: 1.1, widthMm: 66, pieces: 3 } as const;

/** The rule over the cards in two languages, in mm. */
const RULE_MM = 8.5;

/** The largest drawing that a card holds; a larger one takes the place of two, in mm. */
const CARD = { heightMm: 58, widthMm: 68 } as const;

/** Whether cards as low as their drawings allow take fewer pages than cards of the usual height. */
function areLow(cards: readonly ReturnType<typeof card>[], pageMm: number): boolean {
  const places = cards.reduce((sum, { spans }) => sum + 2 ** spans.length, 0);
  const fit = cards.every(({ size, pieces }) => size.widthMm <= LOW.widthMm && pieces.length <= LOW.pieces);
  const pairs = cards.flatMap((one, i) => (i % 2 === 0 ? [[one, ...cards.slice(i + 1, i + 2)]] : []));
  const rows = pairs.map((pair) =>
    Math.max(LOW.leastMm, ...pair.map(({ size }) => size.heightMm + LOW.roundMm)),
  );
  return fit && pagesOf(rows, pageMm) < Math.ceil(places / A_PAGE);
}

/** Pages that rows of these heights take, the first of which bears the rule. */
function pagesOf(rows: readonly number[], pageMm: number): number {
  let [pages, full] = [1, RULE_MM];
  for (const row of rows) {
    if (full + row > pageMm) [pages, full] = [pages + 1, 0];
    full += row;
  }
  return pages;
}

/** The ways in which a drawing is larger than its card. */
function spansOf({ widthMm, heightMm }: Space, limit: Space): readonly ('wide' | 'tall')[] {
  return [
    ...(widthMm > limit.widthMm ? (['wide'] as const) : []),
    ...(heightMm > limit.heightMm ? (['tall'] as const) : []),
  ];
}

function card({ packet, say, units }: SheetContext, surface: PacketSurface, cut: Cut, ratio: number) {
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const drawing = drawCard(cut, tile, {
    id: `card-${surface.name}-${cut.number}`,
    label: say('sheet.hard-cuts.drawing', { number: cut.number }),
    ...units,
    say,
    ratio,
  });
  return {
    number: cut.number,
    count: cut.pieces.length,
    kind: say(`cut.${cut.kind}`),
    hand: cut.hand === 'none' ? '' : say(`cut.hand.${cut.hand}`),
    pieces: cut.pieces,
    zones: [...new Set(surface.pieces.filter(({ id }) => cut.pieces.includes(id)).map(({ zone }) => zone))],
    spans: spansOf(drawing, CARD),
    size: { widthMm: drawing.widthMm, heightMm: drawing.heightMm },
    drawing: drawing.svg,
  };
}
