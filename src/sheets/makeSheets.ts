import type { Packet } from '../packet/Packet.ts';
import { cautiousSay, type Speaker, unreadNote } from './cautiousSay.ts';
import { floorMark } from './floorMark.ts';
import { floorName } from './floorName.ts';
import { readingsSpeakAgainst } from './readingsSpeakAgainst.ts';
import type { Sheet, SheetPage } from './Sheet.ts';
import { type SheetContext, sheetContext } from './SheetContext.ts';
import type { SheetView } from './SheetView.ts';
import { sheets } from './sheets.ts';

export type { Speaker } from './cautiousSay.ts';

/** Every sheet of a packet whose data exist, in the order in which the packet is bound; where kinds are named, those alone. */
export function makeSheets(
  packet: Packet,
  words: Speaker,
  kinds: readonly string[] = sheets.map(({ name }) => name),
): readonly SheetView[] {
  return sheets
    .filter(({ name }) => kinds.includes(name))
    .flatMap((sheet) => sheetViews(packet, sheet, words));
}

function sheetViews(packet: Packet, sheet: Sheet, words: Speaker): SheetView[] {
  const { crew, owner } = packet.spec.print;
  const [lang, second] = sheet.speaks === 'crew' ? [crew[0] ?? 'en', crew[1]] : [owner, undefined];
  const context = sheetContext(
    packet,
    { lang, say: cautiousSay(lang, words) },
    second
      ? { lang: second, say: lang === 'en' ? words.say(second) : cautiousSay(second, words) }
      : undefined,
  );
  const unread = unreadNote(second ? [lang, second] : [lang], words);
  return sheet.make(context).map((page) => {
    const own = frame(context, sheet, page);
    return {
      ...own,
      lang,
      ...(second ? { second } : {}),
      ...(unread ? { unread } : {}),
      ...(page.blank ? {} : markOf(context, own)),
      ...(page.blank ? {} : { head: headOf(packet, context) }),
    };
  });
}

/** What stands in the head: a stop, to the owner in words of his own; and on all sheets that are not for the owner, that the floor is laid. */
function markOf(
  context: SheetContext,
  { for: reader, bundles }: Pick<SheetView, 'for' | 'bundles'>,
): Pick<SheetView, 'hold' | 'laid'> {
  if (readingsSpeakAgainst(context))
    return { hold: context.say(bundles.includes('owner') ? 'gate.holdOwner' : 'gate.hold') };
  if (reader === 'owner') return {};
  return context.packet.job.status === 'finished' ? { laid: context.say('gate.laid') } : {};
}

function headOf({ job }: Packet, { date }: SheetContext): NonNullable<SheetView['head']> {
  return { job: job.title, revision: job.revision, date: date(job.date), stamp: job.stamp };
}

function frame(
  { packet, say, number }: SheetContext,
  sheet: Sheet,
  page: SheetPage,
): Omit<SheetView, 'lang' | 'head'> {
  const template = page.as ?? sheet.name;
  const { floor } = page;
  const [mark, name] = floor === undefined ? [] : [floorMark(packet, floor), floorName(packet, floor)];
  return {
    name: [sheet.name, mark, page.suffix].filter(Boolean).join('-'),
    template,
    title: [say(`sheet.${template}.title`, page.figures), name].filter(Boolean).join(' · '),
    question: say(`sheet.${template}.question`, page.figures),
    for: sheet.for,
    bundles: page.bundles ?? sheet.bundles,
    landscape: page.landscape ?? false,
    paper: packet.spec.print.paper,
    ...(page.scale ? { scale: page.scale } : {}),
    bars: hasBars(page.data),
    units: packet.spec.print.system,
    half: number(0.5),
    data: page.data,
  };
}

/** The bars are a drawing among the data of the sheets that carry them. */
function hasBars(data: unknown): boolean {
  return typeof data === 'object' && data !== null && 'bars' in data && data.bars !== '';
}
