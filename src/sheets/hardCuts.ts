import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import {
  canBreak,
  cardScale,
  cardSpace,
  cardTurn,
  type Drawing,
  drawCard,
  fewSizes,
  leastCard,
  mmPerTick,
  printedSizes,
  ratios,
  type Space,
  shortestSawn,
  wallsLieDown,
} from '../drawing/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { calledCut } from './calledCut.ts';
import { cardMates } from './cardMates.ts';
import { cardOrder } from './cardOrder.ts';
import { cardPages } from './cardPages.ts';
import { type CardRoom, headMm, LOW_CARD, type LowWords, lowRoom, lowWordsMm, roomOf } from './cardRoom.ts';
import { cutOnCard } from './cutOnCard.ts';
import { pageSpace } from './drawingSpace.ts';
import { elsewhere } from './elsewhere.ts';
import { floorMark } from './floorMark.ts';
import { floorName } from './floorName.ts';
import { losesItsMeasure } from './losesItsMeasure.ts';
import type { Sheet } from './Sheet.ts';
import { type SheetContext, sheetContext } from './SheetContext.ts';
import { startOnCard } from './startOnCard.ts';
import { type MatesOf, tileMates } from './tileMates.ts';

/** Which cuts do you make first, while there are spares? A card for each notch, pocket, hole and curve, and each point of several saw lines. */
export const hardCuts: Sheet = {
  name: 'hard-cuts',
  for: 'setter',
  bundles: ['crew', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const hard = hardOf(context);
    if (hard.length === 0) return [];
    const cards = hard.map((one) => card(context, one, roomOf(one.cut.pieces, one.notes)));
    const tight = hard.map((one) => card(context, one, lowRoom));
    // Cards that save a page are no use where a notch is too small on them.
    const pageHeight = pageSpace(context.packet.spec.print.paper, 'portrait').heightMm;
    const low =
      areLow(tight, pageHeight) &&
      tight.every(({ leastMm }, i) => leastMm >= Math.min(LEAST_MM, cards[i]!.leastMm));
    const placed = low ? tight.map((one) => ({ ...one, spans: [] })) : cards;
    const pages = low ? lowPages(placed, pageHeight) : cardPages(placed);
    const { system: unit } = context.packet.spec.print;
    const scales = [...new Set(placed.map(({ scale }) => scale))];
    return [
      {
        ...(scales.length === 1 ? { scale: scales[0]! } : {}),
        data: {
          unit,
          cards: placed,
          pages: pages.map((own) => ({ cards: own, turned: turnedOn(own) })),
          low,
        },
      },
    ];
  },
};

/** How a card is turned: the wall's side down, as on the plan, or with walls on several sides, which its hatch tells. */
type Turned = 'wall' | 'plan' | 'hatched';

/** How the cards of a page are turned; `both` where some have the wall's side down and some lie as on the plan. */
function turnedOn(cards: readonly { readonly turned: Turned }[]): Turned | 'both' {
  const [first, ...others] = new Set(cards.map(({ turned }) => turned));
  if (others.length === 0) return first!;
  return cards.some(({ turned }) => turned === 'hatched') ? 'hatched' : 'both';
}

/** Numbers of the cuts from whose offcuts pieces of a cut come, each tile's largest piece being sawn first. */
function parentsOf(matesOf: MatesOf, { name }: PacketSurface, { pieces }: Cut): readonly number[] {
  const mates = pieces.flatMap((piece) => matesOf(name, piece) ?? []);
  return mates.filter(({ isOffcut }) => isOffcut).flatMap(({ cuts }) => cuts.map(Number));
}

/** A cut that gets a card, with its drawing at each scale that may do, the largest first. */
interface HardCut {
  readonly surface: PacketSurface;
  readonly cut: Cut;
  readonly number: number;
  /** The cuts from whose offcuts its pieces come. */
  readonly from: readonly number[];
  readonly tries: readonly Try[];
  /** What is said under it beside its pieces, in the crew's languages. */
  readonly notes: readonly string[];
}

/** A drawing at a scale, made when it is first asked for: most are seen to be too large by their tile alone. */
interface Try {
  readonly ratio: number;
  /** Whether the tile is drawn shorter than it is, with break lines. */
  readonly broken: boolean;
  readonly leastMm: number;
  readonly least: Space;
  readonly drawn: () => Drawing;
}

function hardOf(context: SheetContext): HardCut[] {
  const matesOf = tileMates(context.packet);
  return context.packet.surfaces.flatMap((surface) => {
    const cards = surface.cuts.filter(isHard).map((cut) => {
      const tries = triesOf(context, surface, cut);
      const from = parentsOf(matesOf, surface, cut);
      return { surface, cut, number: cut.number, from, tries, notes: notesOf(context, surface, cut) };
    });
    return cardOrder(cards);
  });
}

/** Cards on a page of the usual height. */
const A_PAGE = 6;

/** Pieces that a low card holds. */
const LOW_PIECES = 3;

/** The rule over the cards in two languages, in mm. */
const RULE_MM = 8.5;

/** The shortest sawn edge that is told from its arrows and hatch, in mm of paper: where a card of the usual size shows less, its drawing takes the place of two. */
const LEAST_MM = 3;

/** A card as far as its place goes: what its drawing takes, the ways in which it is larger than one card, and its pieces. */
interface CardSpace {
  readonly size: Space;
  readonly spans: readonly unknown[];
  readonly pieces: readonly string[];
  /** The tiles in which its pieces lie elsewhere, and whether it may break, of which a low card has no room to tell. */
  readonly elsewhere?: string;
  readonly breaks?: boolean;
  /** What stands beside the drawing of a low card. */
  readonly told?: LowWords;
}

/** Whether cards as low as their drawings allow take fewer pages than cards of the usual height. */
export function areLow(cards: readonly CardSpace[], pageMm: number): boolean {
  const places = cards.reduce((sum, { spans }) => sum + 2 ** spans.length, 0);
  const fit = cards.every(
    ({ size, pieces, elsewhere, breaks }) =>
      size.widthMm <= lowRoom.single.widthMm && pieces.length <= LOW_PIECES && !elsewhere && !breaks,
  );
  return fit && lowPages(cards, pageMm).length < Math.ceil(places / A_PAGE);
}

/** Low cards page by page, two in a row, under the rule that stands over them on each. */
function lowPages<T extends Pick<CardSpace, 'size' | 'told'>>(cards: readonly T[], pageMm: number): T[][] {
  const pages: T[][] = [];
  let full = Number.POSITIVE_INFINITY;
  for (let i = 0; i < cards.length; i += 2) {
    const row = cards.slice(i, i + 2);
    const high = Math.max(...row.map(lowHeightMm));
    if (full + high > pageMm) [pages[pages.length], full] = [[], RULE_MM];
    pages.at(-1)!.push(...row);
    full += high;
  }
  return pages;
}

/** How high a low card stands: its drawing, or the words beside that. */
function lowHeightMm({ size, told }: Pick<CardSpace, 'size' | 'told'>): number {
  return Math.max(LOW_CARD.leastMm, size.heightMm + LOW_CARD.roundMm, told ? lowWordsMm(told) : 0);
}

/** The ways in which a card is larger than others: its drawing is, or the words beside that and under it would be cut off. */
function spansOf(
  { widthMm, heightMm }: Space,
  { single, doubles, heads }: CardRoom,
  wordsMm: number,
): readonly ('wide' | 'tall')[] {
  const limit = doubles.length > 0 ? single : cardSpace;
  const drawn = [
    ...(widthMm > limit.widthMm ? (['wide'] as const) : []),
    ...(heightMm > limit.heightMm ? (['tall'] as const) : []),
  ];
  if (drawn.length > 0 || !heads || wordsMm <= heads.single) return drawn;
  return wordsMm <= heads.doubles[0]! ? ['wide'] : ['tall'];
}

const isIn = ({ widthMm, heightMm }: Space, limit: Space) =>
  widthMm <= limit.widthMm && heightMm <= limit.heightMm;

const fits = ({ least, drawn }: Try, limit: Space) => isIn(least, limit) && isIn(drawn(), limit);

function triesOf(context: SheetContext, surface: PacketSurface, cut: Cut): Try[] {
  const { packet, say, units } = context;
  const tile = tileOf(context, cut);
  const { system } = packet.spec.print;
  const named = {
    id: ['card', floorMark(packet, surface.name), cut.number].filter(Boolean).join('-'),
    label: say('sheet.hard-cuts.drawing', { number: cut.number }),
    ...units,
    say,
    turn: cardTurn(cut, surface).turn,
  };
  const smallest = cardScale(packet.spec.tiles, system);
  const shown = cutOnCard(surface, packet, cut);
  return ratios[system]
    .filter((ratio) => ratio <= smallest)
    .flatMap((ratio) =>
      (canBreak(shown, tile, ratio) ? [false, true] : [false]).map((broken) => ({ ratio, broken })),
    )
    .map(({ ratio, broken }): Try => {
      let drawing: Drawing | undefined;
      const as = { ...named, ratio, broken };
      return {
        ratio,
        broken,
        leastMm: shortestSawn(cut, mmPerTick(ratio)),
        least: leastCard(shown, tile, as),
        drawn: () => {
          drawing ??= drawCard(shown, tile, as);
          return drawing;
        },
      };
    });
}

/** How high the words beside a card's drawing stand, in mm. */
type HeadOf = (one: Try) => number;

/** A card's drawing as large as it fits with the words beside it, or larger over two cards where its smallest notch would else be lost. */
function largest(tries: readonly Try[], { single: limit, doubles, heads }: CardRoom, headOf: HeadOf): Try {
  const holds = (one: Try, most = Number.POSITIVE_INFINITY) => headOf(one) <= most;
  const whole = tries.filter(({ broken }) => !broken);
  // A low card has no room to say that its tile is broken.
  const all = doubles.length > 0 ? tries : whole;
  const single =
    all.find((one) => fits(one, limit) && holds(one, heads?.single)) ??
    all.find((one) => fits(one, limit)) ??
    whole.at(-1)!;
  if (single.leastMm >= LEAST_MM || doubles.length === 0) return single;
  const double = tries.filter((one) =>
    doubles.some((space, i) => fits(one, space) && holds(one, heads?.doubles[i])),
  );
  const seen = double.filter(({ leastMm }) => leastMm >= LEAST_MM);
  return seen.findLast(({ broken }) => !broken) ?? seen.at(-1) ?? double[0] ?? single;
}

function card(context: SheetContext, { surface, cut, from, tries, notes }: HardCut, room: CardRoom) {
  const { kind, hand, asPlan, turn } = calledCut(context, surface, cut);
  const away = elsewhere(context.packet, surface, cut).join(' · ');
  const headOf = (one: Try) =>
    headMm([
      floorName(context.packet, surface.name),
      context.say('site.scale', { scale: `1:${one.ratio}` }),
      `${kind} ${hand}${asPlan ? ` · ${asPlan}` : ''}`,
      one.broken ? context.say('sheet.hard-cuts.broken') : '',
      away ? context.say('sheet.hard-cuts.elsewhere', { tiles: away }) : '',
      mayBreak(surface, cut) ? context.say('sheet.hard-cuts.breaks') : '',
    ]);
  const chosen = largest(tries, room, headOf);
  const { ratio, broken, leastMm, drawn } = chosen;
  const drawing = drawn();
  const turned: Turned = asPlan !== '' ? 'plan' : wallsLieDown(cut, turn) ? 'wall' : 'hatched';
  return {
    number: cut.number,
    floor: floorName(context.packet, surface.name),
    from,
    count: cut.pieces.length,
    kind,
    hand,
    asPlan,
    turned,
    broken,
    notes,
    told: { called: `${kind} ${hand} ${asPlan}`, pieces: cut.pieces.length, notes },
    elsewhere: away,
    breaks: mayBreak(surface, cut),
    pieces: cut.pieces,
    zones: [...new Set(surface.pieces.filter(({ id }) => cut.pieces.includes(id)).map(({ zone }) => zone))],
    spans: spansOf(drawing, room, headOf(chosen)),
    size: { widthMm: drawing.widthMm, heightMm: drawing.heightMm },
    scale: `1:${ratio}`,
    leastMm,
    drawing: drawing.svg,
  };
}

/** What is said under a card beside its pieces, in each language of the crew. */
function notesOf(context: SheetContext, surface: PacketSurface, cut: Cut): readonly string[] {
  const { second, packet } = context;
  const shown = cutOnCard(surface, packet, cut);
  const tile = tileOf(context, cut);
  const told = (own: SheetContext) => [
    ...cardMates(own.say, packet, surface, cut),
    ...(shown === cut ? [] : [startOnCard(own, surface, cut, cardTurn(cut, surface).turn)]),
    ...(isCentreOff(context, shown)
      ? [own.say('sheet.hard-cuts.offTile')]
      : isCrowded(shown)
        ? [own.say('sheet.hard-cuts.manySizes')]
        : []),
    ...(losesItsMeasure(shown, tile) ? [own.say('sheet.hard-cuts.markFirst')] : []),
  ];
  return [context, ...(second ? [sheetContext(packet, second)] : [])]
    .map((own) => told(own).filter(Boolean).join(' '))
    .filter(Boolean);
}

function tileOf({ packet }: SheetContext, cut: Cut): TileSpec {
  return packet.spec.tiles.find(({ key }) => key === cut.tile)!;
}

/** Whether too little tile stays beside an opening in one of its pieces. */
function mayBreak({ faults }: PacketSurface, { pieces }: Cut): boolean {
  return faults.some((fault) => fault.code === 'web' && fault.pieces.some((id) => pieces.includes(id)));
}

/** Whether a card has more figures than can be read at a glance. */
const isCrowded = (cut: Cut): boolean => printedSizes(cut).length > fewSizes;

/** Whether a circle is swung from beyond the tile, where no compass stands: its template has the curve. */
function isCentreOff(context: SheetContext, cut: Cut): boolean {
  const tile = tileOf(context, cut);
  return cut.circles.some(({ centre: [x, y] }) => x < 0 || y < 0 || x > tile.length || y > tile.width);
}
