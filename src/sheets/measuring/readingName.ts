import { printLength, TICKS_PER_64TH, type Ticks } from '../../measure/index.ts';
import type { AdjustedReading, Adjustment, Suspect } from '../../room/Room.ts';
import type { SheetContext } from '../SheetContext.ts';

/** A tenth of a millimetre is no figure to tell how far a tape is out: sixteenths and whole millimetres are. */
export function roughly({ units }: Pick<SheetContext, 'units'>, ticks: Ticks): string {
  return printLength(ticks, units, {
    feet: true,
    finest: units.system === 'inches' ? 4 * TICKS_PER_64TH : 320,
  });
}

/** What a reading is called: a wall or diagonal by its letters, a corner check, a corner seen from the base line. */
export function readingName({ say }: Pick<SheetContext, 'say'>, id: string): string {
  const [corner, part] = id.split(':');
  if (part) return say(`sheet.measuring.${part === 'along' ? 'along' : 'off'}`, { corner });
  return id.includes('-') ? id : say('sheet.measuring.check', { corner });
}

function suspectNames(context: SheetContext, { ids, which }: Suspect): readonly string[] {
  return ids.map((id, i) => {
    const name = readingName(context, id);
    const one = which[i];
    return one === null || one === undefined
      ? name
      : context.say('sheet.measuring.oneReading', { name, n: one + 1 });
  });
}

/** What to read again, and what the slip looks like. */
export function suspectText(context: SheetContext, suspect: Suspect): string {
  const { say, lang } = context;
  const together = suspect.verdict === 'named' ? 'conjunction' : 'disjunction';
  const figures = {
    ids: new Intl.ListFormat(lang, { type: together }).format(suspectNames(context, suspect)),
    count: suspect.ids.length,
    slip: roughly(context, Math.abs(suspect.slip)),
    way: suspect.slip > 0 ? 'long' : 'short',
    kind: suspect.kind ?? 'none',
  };
  return say(`sheet.measuring.${suspect.verdict}`, figures);
}

/** How a reading stood its test. */
export function testText({ say, number }: SheetContext, reading: AdjustedReading): string {
  if (reading.setAside) return say('sheet.measuring.setAside');
  if (!reading.test) return say('sheet.measuring.unchecked');
  const { value, limit } = reading.test;
  return say('sheet.measuring.tested', {
    value: number(value),
    limit: number(limit),
    over: value > limit ? 'yes' : 'no',
  });
}

/** What the readings say together: how exact, how many too many, whether they agree, and where a slip could hide. */
export function togetherTexts(context: SheetContext, adjustment: Adjustment): readonly string[] {
  const { say, length } = context;
  const { precision, unitSd, redundancy, globalTest, measureNext } = adjustment;
  const exact = say('sheet.measuring.exact', {
    sd: length(precision.sd),
    shown: unitSd === null ? '' : roughly(context, unitSd * precision.sd),
    kind: unitSd === null ? 'untold' : precision.kind,
  });
  const closes = say('sheet.measuring.closes', {
    by: roughly(context, adjustment.misclosure),
    walk: roughly(context, adjustment.perimeter),
  });
  if (redundancy <= 0) return [exact, closes, say('room.noCheck', { diagonal: measureNext ?? 'none' })];
  const passed = globalTest && say('sheet.measuring.together', { passed: globalTest.passed ? 'yes' : 'no' });
  return [exact, closes, say('sheet.measuring.spare', { count: redundancy }), ...(passed ? [passed] : [])];
}

/** The reading worth taking next and what it gains, both as 95 of 100 cases; none where the gain is too small to print. */
export function nextText(context: SheetContext, { next }: Adjustment): readonly string[] {
  if (!next) return [];
  const figures = {
    name: readingName(context, next.id),
    now: context.length(2 * next.sdNow),
    with: context.length(2 * next.sdThen),
  };
  return figures.with === figures.now ? [] : [context.say('sheet.measuring.next', figures)];
}
