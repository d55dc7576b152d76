import { drawChoice, drawSwatch, type Space, textWidth } from '../drawing/index.ts';
import type { Candidate } from '../layout/Layout.ts';
import { tilesLaid } from '../layout/tilesLaid.ts';
import { sawDown } from '../measure/index.ts';
import type { PacketChoice, PacketSurface } from '../packet/Packet.ts';
import type { SeenPiece } from '../packet/seenPieces.ts';
import { type ChoiceFigures, choiceReason } from './choiceReason.ts';
import { pageSpace } from './drawingSpace.ts';
import { forOwner } from './forOwner.ts';
import { noToilet } from './noToilet.ts';
import { noWayOut } from './noWayOut.ts';
import { readingsSpeakAgainst } from './readingsSpeakAgainst.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { type SeenDepth, seenFromDoor } from './seenFromDoor.ts';
import { smallestShare } from './smallestShare.ts';
import { tileKey } from './tileKey.ts';

/** Which of two layouts does the owner want? The chosen one and the one that differs most, side by side, in words that need no trade. */
export const choiceSheet: Sheet = {
  name: 'choice-sheet',
  for: 'owner',
  bundles: ['owner', 'office', 'packet'],
  speaks: 'owner',
  make: (context) =>
    context.packet.surfaces.flatMap((surface, i) =>
      surface.choice ? [choicePage(context, surface, surface.choice, i)] : [],
    ),
};

/** Between the two drawings, and what stands over and under them, in mm. */
const GUTTER_MM = 5;
const WORDS_MM = 150;

/** What the key takes that tells several tiles apart, in mm. */
const TILE_KEY_MM = 6;

/** Sentences that not every job has: the reason in the type of the figures, the others in small type; a line's height and what stands round each, in mm. */
const SAID = { reason: 12, other: 9, line: 0.5, round: 1.6 } as const;

/** What is told between the figures and the answer, where there is something to tell. */
interface Told {
  readonly reason: string;
  readonly noToilet: string;
  readonly noWayOut: string;
  readonly held: string;
}

function toldMm({ reason, ...others }: Told, widthMm: number): number {
  const high = (words: string, points: number) =>
    words === '' ? 0 : Math.ceil(textWidth(words, points, 700) / widthMm) * points * SAID.line + SAID.round;
  const small = Object.values(others).reduce((sum, words) => sum + high(words, SAID.other), 0);
  return high(reason, SAID.reason) + small;
}

/** The page stands upright; an owner lays no rule on it, so it bears no check bars. */
function halfPage({ packet }: SheetContext, surface: PacketSurface, told: Told): Space {
  const { widthMm, heightMm } = pageSpace(packet.spec.print.paper, 'portrait');
  const key = tilesLaid(surface).length > 1 ? TILE_KEY_MM : 0;
  const words = WORDS_MM + key + toldMm(told, widthMm);
  return { widthMm: (widthMm - GUTTER_MM) / 2, heightMm: heightMm - words };
}

interface Offer {
  readonly candidate: Candidate;
  readonly pieces: readonly SeenPiece[];
  readonly buy: PacketChoice['buy'];
}

function choicePage(
  context: SheetContext,
  surface: PacketSurface,
  choice: PacketChoice,
  i: number,
): SheetPage {
  const { packet, say, units } = context;
  const own = { candidate: surface.start.chosen, pieces: surface.pieces, buy: packet.tiles };
  const advised = !isBetter(choice.candidate, own.candidate);
  const told: Told = {
    reason: advised ? choiceReason(context, toldOf(context, own), toldOf(context, choice)) : '',
    noToilet: noToilet(context),
    noWayOut: noWayOut(context),
    held: readingsSpeakAgainst(context) ? say('sheet.choice-sheet.held') : '',
  };
  const drawings = [own, choice].map(({ pieces }, k) =>
    drawChoice(forOwner(context, surface), pieces, {
      id: `choice-${i + 1}-${k + 1}`,
      label: say('sheet.choice-sheet.drawing', { number: k + 1 }),
      ...units,
      say,
      space: halfPage(context, surface, told),
    }),
  );
  return {
    ...(i > 0 ? { suffix: surface.name } : {}),
    scale: `1:${drawings[0]!.ratio}`,
    data: {
      plans: drawings.map(({ svg }) => svg),
      swatches: [
        ...(['cut', 'narrowest'] as const).map((look) => {
          const name = say(`sheet.choice-sheet.key.${look}`);
          return { name, svg: drawSwatch(look, { id: `swatch-${i + 1}-${look}`, label: name }).svg };
        }),
        ...tileKey(context, surface, surface.pieces, `choice-${i + 1}`),
      ],
      advised,
      rows: rowsOf(context, surface, own, choice),
      ...told,
      answerBy: answerBy(context),
      setter: packet.spec.contacts.setter ?? '',
      phone: packet.spec.contacts.phone ?? '',
    },
  };
}

/** By when the answer is wanted: before tile is bought, and before the first is set where the job says when that is. */
function answerBy({ packet, say, date }: SheetContext): string {
  const start = packet.calendar.find(({ code }) => code === 'set')?.from;
  const known = start !== undefined && packet.defaults.every(({ path }) => path !== 'work.from');
  return say('sheet.choice-sheet.by', { date: known ? date(start) : 'none' });
}

function toldOf(context: SheetContext, { candidate, pieces, buy }: Offer): ChoiceFigures {
  return {
    share: candidate.smallestShare,
    narrowest: smallestShare(context, candidate).size,
    small: candidate.underHalf,
    cut: pieces.filter(({ whole }) => !whole).length,
    pieces: pieces.length,
    buy: Object.values(buy).reduce((sum, one) => sum + one.buy, 0),
    boxes: Object.values(buy).map(({ boxes }) => boxes),
  };
}

/** Whether a layout is at least as good by every figure that is told: then nobody can advise the other one. */
function isBetter(one: Candidate, than: Candidate): boolean {
  return (
    one.smallestShare >= than.smallestShare - 0.005 &&
    one.underHalf <= than.underHalf &&
    one.cut <= than.cut &&
    one.pieces <= than.pieces
  );
}

/** One line of figures a question, the first for the layout on the left. */
function rowsOf(context: SheetContext, surface: PacketSurface, own: Offer, other: Offer) {
  const { say } = context;
  const both = (code: string, tell: (offer: Offer) => string, figures = {}) => ({
    name: say(`sheet.choice-sheet.${code}`, figures),
    values: [tell(own), tell(other)],
  });
  const doors = [own, other].map(({ pieces }) => seenFromDoor(surface, pieces));
  const views = doors[0]!.flatMap(({ name }, k) => {
    const pair = doors.map((views) => views[k]);
    if (pair.some((view) => view === undefined)) return [];
    const line = (code: 'near' | 'far') => ({
      name: say(`sheet.choice-sheet.${code}`, { name }),
      values: pair.map((view) => depthWords(context, view![code])),
    });
    return [line('near'), line('far')];
  });
  return [
    both('narrowest', ({ candidate }) => say('sheet.choice-sheet.narrow', smallestShare(context, candidate))),
    both('small', ({ candidate }) => String(candidate.underHalf)),
    both(
      'cut',
      ({ pieces }) => {
        const cut = pieces.filter(({ whole }) => !whole).length;
        return say('sheet.choice-sheet.ofAll', { cut, pieces: pieces.length });
      },
      { shared: isShared(context) ? 'yes' : 'no' },
    ),
    ...views,
    ...Object.keys(own.buy).map((key) =>
      both('buy', ({ buy }) => say('sheet.choice-sheet.bought', { ...buy[key] }), {
        tile: Object.keys(own.buy).length > 1 ? nameOf(context, key) : 'none',
      }),
    ),
  ];
}

/** Whether tiles are sawn that give more than one piece. */
function isShared({ packet }: SheetContext): boolean {
  return Object.values(packet.tiles).some(({ from }) => from.some(({ pieces }) => pieces.length > 1));
}

function nameOf({ packet }: SheetContext, key: string): string {
  return packet.spec.tiles.find((tile) => tile.key === key)?.name ?? key;
}

function size({ packet, length }: SheetContext, ticks: number): string {
  return length(sawDown(ticks, packet.spec.print.step));
}

function depthWords(context: SheetContext, { depth }: SeenDepth): string {
  return depth === null
    ? context.say('sheet.choice-sheet.wholeTile')
    : context.say('sheet.choice-sheet.cutTo', { size: size(context, depth) });
}
