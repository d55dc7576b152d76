import {
  type Figure,
  figure,
  type Notation,
  printDecimal,
  printLength,
  type Ticks,
} from '../measure/index.ts';
import type { Packet } from '../packet/Packet.ts';
import { clockTime } from './clockTime.ts';
import { decimalMark } from './decimalMark.ts';
import { localeOf } from './localeOf.ts';
import type { Say } from './SheetView.ts';

/** What every sheet needs at hand: the packet, the words of its language, and lengths, dates and money as this job prints them. */
export interface SheetContext {
  readonly packet: Packet;
  readonly lang: string;
  readonly say: Say;
  /** The crew's second language, on sheets for the crew. */
  readonly second?: { readonly lang: string; readonly say: Say };
  /** The units of the job and the decimal mark of the sheet's language: how words, tables and drawings write figures. */
  readonly units: Notation;
  /** `7 5/8 in`, `289.5 mm`. */
  readonly length: (ticks: Ticks) => string;
  /** `8 ft 2 1/4 in` in inch jobs, millimetres otherwise. */
  readonly longLength: (ticks: Ticks) => string;
  /** A figure for the saw, in its parts. */
  readonly figure: (ticks: Ticks) => Figure;
  /** `Mon 8 Mar 2027`, in the sheet's language. */
  readonly date: (iso: string) => string;
  /** `Tue 9 Mar, 15:00`, or `Tue 9 Mar, 3 PM` where a day has twice twelve hours. */
  readonly time: (iso: string) => string;
  /** The time of day alone. */
  readonly clock: (iso: string) => string;
  /** `0.85`: a number to so many decimals at most, one unless told; `0,85` in Spanish on A4. */
  readonly number: (value: number, digits?: number) => string;
}

/** A day as its language writes it, less the words and dots between its parts, for which sheets have no room: `qui., 11 de mar.` is `qui, 11 mar`. */
function shortDate(format: Intl.DateTimeFormat, iso: string): string {
  return format
    .formatToParts(new Date(`${iso.slice(0, 10)}T00:00:00Z`))
    .map(({ type, value }) =>
      type === 'literal' ? value.replace(/\s*\p{L}+\s*/gu, ' ') : value.replace(/\.$/, ''),
    )
    .join('');
}

/** Formats of a language's days, which take longer to make than a sheet takes to write. */
const formats = new Map<string, { readonly day: Intl.DateTimeFormat; readonly hour: Intl.DateTimeFormat }>();

function formatsOf(lang: string) {
  const known = formats.get(lang);
  if (known) return known;
  const parts = { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' } as const;
  const made = {
    day: new Intl.DateTimeFormat(lang, { ...parts, year: 'numeric' }),
    hour: new Intl.DateTimeFormat(lang, parts),
  };
  formats.set(lang, made);
  return made;
}

/** Builds the context of one language; pure, since dates are local times without a zone. */
export function sheetContext(
  packet: Packet,
  first: { readonly lang: string; readonly say: Say },
  second?: { readonly lang: string; readonly say: Say },
): SheetContext {
  const { lang, say } = first;
  const { system, paper } = packet.spec.print;
  const units = { system, decimal: decimalMark(localeOf(lang, paper)) };
  const { day, hour } = formatsOf(lang);
  const clock = (iso: string) => clockTime(iso, lang, paper);
  return {
    packet,
    lang,
    say,
    ...(second ? { second } : {}),
    units,
    length: (ticks) => printLength(ticks, units),
    longLength: (ticks) => printLength(ticks, units, { feet: system === 'inches' }),
    figure: (ticks) => figure(ticks, units),
    date: (iso) => shortDate(day, iso),
    time: (iso) => `${shortDate(hour, iso)}, ${clock(iso)}`,
    clock,
    number: (value, digits = 1) => printDecimal(value, digits, units.decimal),
  };
}
