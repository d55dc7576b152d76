import { drawChoice, drawSwatch, type Space } from '../drawing/index.ts';
import type { Candidate } from '../layout/Layout.ts';
import type { PacketChoice, PacketSurface } from '../packet/Packet.ts';
import { type ChoiceFigures, choiceReason } from './choiceReason.ts';
import { choiceRows, type Offer } from './choiceRows.ts';
import { choiceWordsMm } from './choiceWordsMm.ts';
import { pageSpace } from './drawingSpace.ts';
import { forOwner } from './forOwner.ts';
import { noToilet } from './noToilet.ts';
import { noWayOut } from './noWayOut.ts';
import { readingsSpeakAgainst } from './readingsSpeakAgainst.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
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

/** Between the two drawings, in mm. */
const GUTTER_MM = 5;

/** What is told between the figures and the answer, where there is something to tell. */
interface Told {
  readonly reason: string;
  readonly noToilet: string;
  readonly noWayOut: string;
  readonly held: string;
}

/** The page stands upright; an owner lays no rule on it, so it bears no check bars. */
function halfPage({ packet, say }: SheetContext, page: Written): Space {
  const { widthMm, heightMm } = pageSpace(packet.spec.print.paper, 'portrait');
  const { how, told, rows, key, answerBy, call } = page;
  const { reason, ...others } = told;
  const words = choiceWordsMm(
    {
      how,
      key,
      rows,
      large: [reason],
      small: Object.values(others),
      answer: `${say('sheet.choice-sheet.answer')} ${answerBy}`,
      boxes: ['one', 'two', 'talk'].map((code) =>
        [say(`sheet.choice-sheet.${code}`), ...(code === 'talk' ? call : [])].join(' '),
      ),
    },
    widthMm,
  );
  return { widthMm: (widthMm - GUTTER_MM) / 2, heightMm: heightMm - words };
}

/** What stands on the page in words, before room is reckoned for the drawings. */
interface Written {
  readonly how: string;
  readonly told: Told;
  readonly rows: ReturnType<typeof choiceRows>;
  readonly key: readonly string[];
  readonly answerBy: string;
  readonly call: readonly [setter: string, phone: string];
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
    reason: advised
      ? choiceReason(context, toldOf(context, surface, own), toldOf(context, surface, choice))
      : '',
    noToilet: noToilet(context),
    noWayOut: noWayOut(context),
    held: readingsSpeakAgainst(context) ? say('sheet.choice-sheet.held') : '',
  };
  const swatches = swatchesOf(context, surface, i);
  const { setter = '', phone = '' } = packet.spec.contacts;
  const rows = choiceRows(context, surface, own, choice);
  const page = {
    how: say('sheet.choice-sheet.how', { border: surface.border ? 'yes' : 'no' }),
    told,
    rows,
    key: swatches.map(({ name }) => name),
    answerBy: answerBy(context),
    call: [setter, phone],
  } as const;
  const space = halfPage(context, page);
  const drawings = [own, choice].map(({ pieces }, k) =>
    drawChoice(forOwner(context, surface), pieces, {
      id: `choice-${i + 1}-${k + 1}`,
      label: say('sheet.choice-sheet.drawing', { number: k + 1 }),
      ...units,
      say,
      space,
    }),
  );
  return {
    floor: surface.name,
    scale: `1:${drawings[0]!.ratio}`,
    data: {
      plans: drawings.map(({ svg }) => svg),
      swatches,
      how: page.how,
      advised,
      rows,
      ...told,
      answerBy: page.answerBy,
      setter,
      phone,
    },
  };
}

/** What the looks of the drawings mean: pieces that are cut, the narrowest of them, and where there are several tiles which is which. */
function swatchesOf(context: SheetContext, surface: PacketSurface, i: number) {
  const looks = (['cut', 'narrowest'] as const).map((look) => {
    const name = context.say(`sheet.choice-sheet.key.${look}`, { border: surface.border ? 'yes' : 'no' });
    return { name, svg: drawSwatch(look, { id: `choice-swatch-${i + 1}-${look}`, label: name }).svg };
  });
  return [...looks, ...tileKey(context, surface, surface.pieces, `choice-${i + 1}`)];
}

/** By when the answer is wanted: before tile is bought, and before the first is set where the job says when that is. */
function answerBy({ packet, say, date }: SheetContext): string {
  const start = packet.calendar.find(({ code }) => code === 'set')?.from;
  const known = start !== undefined && packet.defaults.every(({ path }) => path !== 'work.from');
  return say('sheet.choice-sheet.by', { date: known ? date(start) : 'none' });
}

function toldOf(
  context: SheetContext,
  { border }: PacketSurface,
  { candidate, pieces, buy }: Offer,
): ChoiceFigures {
  return {
    share: candidate.smallestShare,
    narrowest: smallestShare(context, candidate).size,
    small: candidate.underHalf,
    cut: pieces.filter(({ whole }) => !whole).length,
    pieces: pieces.length,
    buy: Object.values(buy).reduce((sum, one) => sum + one.buy, 0),
    boxes: Object.values(buy).map(({ boxes }) => boxes),
    border: border !== undefined,
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
