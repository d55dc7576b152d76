import type { Cut } from '../cuts/Cut.ts';
import { drawCard, drawnInSteps } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { calledCut } from './calledCut.ts';
import { cutOnCard } from './cutOnCard.ts';
import type { SheetContext } from './SheetContext.ts';

/** A cut on the page beside the saw. */
export interface SawCard {
  /** Id of the card on its page. */
  readonly id: string;
  readonly number: number;
  readonly kind: string;
  readonly drawing: string;
  readonly sizes: readonly { readonly what: string; readonly size: string }[];
  /** How many pieces are sawn so. */
  readonly count: number;
  /** Its pieces by name, each with the id of its place on the plan, under the zones in which they are set. */
  readonly zones: readonly {
    readonly zone: number;
    readonly pieces: readonly { readonly name: string; readonly at: string }[];
  }[];
}

export const cardId = (i: number, number: number): string => `cut-${i + 1}-${number}`;
export const pieceId = (i: number, piece: string): string => `piece-${i + 1}-${piece}`;

/** A card without what its page says once for all of them, its lines written in steps: a floor has a hundred of them. */
function onScreen(svg: string): string {
  const [root = ''] = /^<svg[^>]*>/.exec(svg) ?? [];
  const bare = root.replace(/ (?:xmlns|font-family|style)="[^"]*"/g, '');
  return bare + drawnInSteps(svg.slice(root.length));
}

function zonesOf(surface: PacketSurface, i: number, cut: Cut): SawCard['zones'] {
  const pieces = surface.pieces.filter(({ id }) => cut.pieces.includes(id));
  return [...new Set(pieces.map(({ zone }) => zone))]
    .sort((a, b) => a - b)
    .map((zone) => ({
      zone,
      pieces: pieces.filter((one) => one.zone === zone).map(({ id }) => ({ name: id, at: pieceId(i, id) })),
    }));
}

/** The card of a cut on the surface of that index, its drawing in the ratio of all cards. */
export function sawCard(
  context: SheetContext,
  surface: PacketSurface,
  i: number,
  cut: Cut,
  ratio: number,
): SawCard {
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
    count: cut.pieces.length,
    zones: zonesOf(surface, i, cut),
  };
}
