import type { Packet } from '../packet/Packet.ts';
import { localeOf } from './localeOf.ts';

/** Formats of the locales in use, which take longer to make than a time takes to write. */
const formats = new Map<string, Intl.DateTimeFormat>();

/** Of a full hour the minutes are not said in twelve hours: `8 AM`. */
function formatOf(locale: string, full: boolean): Intl.DateTimeFormat {
  const key = `${locale} ${full}`;
  const known = formats.get(key);
  if (known) return known;
  const minute = full ? {} : ({ minute: '2-digit' } as const);
  const made = new Intl.DateTimeFormat(locale, { hour: 'numeric', ...minute, timeZone: 'UTC' });
  formats.set(key, made);
  return made;
}

/**
 * The time of day of a local moment as the language writes it where such paper is used: in twelve hours with what tells morning from
 * afternoon, which no line break parts from them, or in twenty-four with both digits of the hour.
 *
 * @example
 * clockTime('2027-03-08T15:30', 'es', 'a4') //=> '15:30'
 * clockTime('2027-03-08T15:30', 'en', 'letter').replace(/\s/, ' ') //=> '3:30 PM'
 */
export function clockTime(iso: string, lang: string, paper: Packet['spec']['print']['paper']): string {
  const format = formatOf(localeOf(lang, paper), iso.slice(14, 16) === '00');
  if (!format.resolvedOptions().hour12) return iso.slice(11, 16);
  return format.format(new Date(`${iso.slice(0, 16)}Z`)).replace(/\s/g, '\u00a0');
}
