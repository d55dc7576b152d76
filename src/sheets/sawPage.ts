import { cardScale, drawPlan, sharedStyles } from '../drawing/index.ts';
import type { Packet, PacketPiece, PacketSurface } from '../packet/Packet.ts';
import { asSaid } from './asSaid.ts';
import { type SheetContext, sheetContext } from './SheetContext.ts';
import type { Say } from './SheetView.ts';
import { cardId, pieceId, type SawCard, sawCard } from './sawCard.ts';

/** The page for a phone beside the saw: each surface's plan whose cut pieces can be tapped, and a card for each cut. */
export interface SawPage {
  readonly lang: string;
  /** Styles that its drawings share. */
  readonly styles: string;
  readonly surfaces: readonly SawSurface[];
}

interface SawSurface {
  readonly name: string;
  readonly plan: string;
  /** Whether there are so many pieces that the plan shows those alone that are sawn. */
  readonly sawnAlone: boolean;
  readonly cards: readonly SawCard[];
}

/** Room for the plan in mm: it is drawn once and shown at any size. */
const space = { widthMm: 340, heightMm: 260 };
/** With more pieces than this the page would be too large to be sent, and whole tiles too small to be seen. */
const MOST_DRAWN = 3000;

function planOf({ packet, say, units }: SheetContext, surface: PacketSurface, i: number): string {
  const { step } = packet.spec.print;
  // A whole tile has no card to lead to.
  const linkOf = ({ id, cut }: PacketPiece) =>
    cut === null
      ? undefined
      : { id: pieceId(i, id), to: cardId(i, cut), label: say('saw.cut', { piece: id, cut }) };
  const label = say('sheet.layout-plan.drawing', { name: surface.name });
  return drawPlan(asSaid({ say }, surface), {
    id: `saw-${i + 1}`,
    label,
    ...units,
    step,
    say,
    space,
    numbers: true,
    linkOf,
  }).svg;
}

function surfaceOf(context: SheetContext, surface: PacketSurface, i: number, ratio: number): SawSurface {
  const sawnAlone = surface.pieces.length > MOST_DRAWN;
  const pieces = sawnAlone ? surface.pieces.filter(({ cut }) => cut !== null) : surface.pieces;
  return {
    name: surface.name,
    plan: planOf(context, { ...surface, pieces }, i),
    sawnAlone,
    cards: surface.cuts.map((cut) => sawCard(context, surface, i, cut, ratio)),
  };
}

/** The surfaces with the looks of all their drawings told once. */
function withStyles(surfaces: readonly SawSurface[]): Pick<SawPage, 'styles' | 'surfaces'> {
  const all = surfaces.flatMap(({ plan, cards }) => [plan, ...cards.map(({ drawing }) => drawing)]);
  const { styles, drawings } = sharedStyles(all);
  const lookOf = new Map(all.map((svg, i) => [svg, drawings[i]!]));
  return {
    styles,
    surfaces: surfaces.map((surface) => ({
      ...surface,
      plan: lookOf.get(surface.plan)!,
      cards: surface.cards.map((card) => ({ ...card, drawing: lookOf.get(card.drawing)! })),
    })),
  };
}

/** The page for one packet in one language. */
export function sawPage(packet: Packet, lang: string, say: Say): SawPage {
  const context = sheetContext(packet, { lang, say });
  const ratio = cardScale(packet.spec.tiles, packet.spec.print.system);
  const surfaces = packet.surfaces.map((surface, i) => surfaceOf(context, surface, i, ratio));
  return { lang, ...withStyles(surfaces) };
}
