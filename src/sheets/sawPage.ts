import type { Cut } from '../cuts/Cut.ts';
import { cardScale, drawCard, drawnInSteps, drawPlan } from '../drawing/index.ts';
import type { Packet, PacketPiece, PacketSurface } from '../packet/Packet.ts';
import { asSaid } from './asSaid.ts';
import { calledCut } from './calledCut.ts';
import { cutOnCard } from './cutOnCard.ts';
import { type SheetContext, sheetContext } from './SheetContext.ts';
import type { Say } from './SheetView.ts';

/** The page for a phone beside the saw: each surface's plan whose pieces can be tapped, and a card for each cut. */
export interface SawPage {
  readonly lang: string;
  readonly surfaces: readonly {
    readonly name: string;
    readonly plan: string;
    readonly cards: readonly SawCard[];
  }[];
}

export interface SawCard {
  /** Id of the card on its page. */
  readonly id: string;
  readonly number: number;
  readonly kind: string;
  readonly drawing: string;
  readonly sizes: readonly { readonly what: string; readonly size: string }[];
  /** Its pieces by name, each with the id of its place on the plan and the zone in which it is set. */
  readonly pieces: readonly { readonly name: string; readonly at: string; readonly zone: number }[];
}

/** Room for the plan in mm: it is drawn once and shown at any size. */
const space = { widthMm: 340, heightMm: 260 };

const cardId = (i: number, number: number) => `cut-${i + 1}-${number}`;
const pieceId = (i: number, piece: string) => `piece-${i + 1}-${piece}`;
/** Whole tiles have no card of their own: they lead back to the plan. */
const planId = (i: number) => `plan-${i + 1}`;

function planOf({ packet, say, units }: SheetContext, surface: PacketSurface, i: number): string {
  const { step } = packet.spec.print;
  const linkOf = ({ id, cut }: PacketPiece) => ({
    id: pieceId(i, id),
    to: cut === null ? planId(i) : cardId(i, cut),
    label: cut === null ? say('saw.whole', { piece: id }) : say('saw.cut', { piece: id, cut }),
  });
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

/** A card without what its page says once for all of them, its lines written in steps: a floor has a hundred of them. */
function onScreen(svg: string): string {
  const [root = ''] = /^<svg[^>]*>/.exec(svg) ?? [];
  const bare = root.replace(/ (?:xmlns|font-family|style)="[^"]*"/g, '');
  return bare + drawnInSteps(svg.slice(root.length));
}

function cardOf(context: SheetContext, surface: PacketSurface, i: number, cut: Cut, ratio: number): SawCard {
  const { packet, say, length, units } = context;
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const { turn, kind, hand, asPlan } = calledCut(context, surface, cut);
  return {
    id: cardId(i, cut.number),
    number: cut.number,
    kind: `${`${kind} ${hand}`.trimEnd()}${asPlan === '' ? '' : ` · ${asPlan}`}`,
    drawing: onScreen(
      drawCard(cutOnCard(surface, packet, cut), tile, {
        id: `saw-card-${i + 1}-${cut.number}`,
        label: say('sheet.hard-cuts.drawing', { number: cut.number }),
        ...units,
        say,
        ratio,
        turn,
      }).svg,
    ),
    sizes: cut.fences.map(({ saw }) => ({ what: say('saw.fence'), size: length(saw) })),
    pieces: surface.pieces
      .filter(({ id }) => cut.pieces.includes(id))
      .map(({ id, zone }) => ({ name: id, at: pieceId(i, id), zone })),
  };
}

/** The page for one packet in one language. */
export function sawPage(packet: Packet, lang: string, say: Say): SawPage {
  const context = sheetContext(packet, { lang, say });
  const ratio = cardScale(packet.spec.tiles, packet.spec.print.system);
  return {
    lang,
    surfaces: packet.surfaces.map((surface, i) => ({
      name: surface.name,
      plan: planOf(context, surface, i),
      cards: surface.cuts.map((cut) => cardOf(context, surface, i, cut, ratio)),
    })),
  };
}
