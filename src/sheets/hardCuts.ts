import type { Cut } from '../cuts/Cut.ts';
import { cardScale, drawCard } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Which cuts do you make first, while there are spares? A card for each notch, pocket, hole and curve. */
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
      surface.cuts.filter((cut) => cut.hard).map((cut) => card(context, surface, cut, ratio)),
    );
    return cards.length === 0 ? [] : [{ scale: `1:${ratio}`, data: { cards, low: areLow(cards) } }];
  },
};

/** Cards on a page of the usual height, and of a lower one; what a low one holds, in mm and pieces. */
const A_PAGE = 6;
const A_PAGE_LOW = 8;
const LOW = { heightMm: 56, widthMm: 66, pieces: 3 } as const;

/** The largest drawing that a card holds; a larger one takes the place of two, in mm. */
const CARD = { heightMm: 58, widthMm: 68 } as const;

/** Whether lower cards save a page, and every drawing and its pieces have room on one. */
function areLow(cards: readonly ReturnType<typeof card>[]): boolean {
  const saves = Math.ceil(cards.length / A_PAGE_LOW) < Math.ceil(cards.length / A_PAGE);
  return (
    saves &&
    cards.every(
      ({ size, pieces }) =>
        size.heightMm <= LOW.heightMm && size.widthMm <= LOW.widthMm && pieces.length <= LOW.pieces,
    )
  );
}

function card({ packet, say }: SheetContext, surface: PacketSurface, cut: Cut, ratio: number) {
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const drawing = drawCard(cut, tile, {
    id: `card-${surface.name}-${cut.number}`,
    label: say('sheet.hard-cuts.drawing', { number: cut.number }),
    system: packet.spec.print.system,
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
    spans: [
      ...(drawing.widthMm > CARD.widthMm ? ['wide'] : []),
      ...(drawing.heightMm > CARD.heightMm ? ['tall'] : []),
    ],
    size: { widthMm: drawing.widthMm, heightMm: drawing.heightMm },
    drawing: drawing.svg,
  };
}
