import type { Packet } from '../packet/Packet.ts';

/** Where a paper is printed on: letter in the United States, A4 where Europe's customs hold, as regions of a locale. */
const REGIONS: Readonly<Record<Packet['spec']['print']['paper'], string>> = { letter: 'US', a4: '150' };

/** Formats of the locales in use, which take longer to make than a time takes to write. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(locale: string): Intl.DateTimeFormat {
  const known = formats.get(locale);
  if (known) return known;
  const made = new Intl.DateTimeFormat(locale, { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });
  formats.set(locale, made);
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
  const format = formatOf(`${lang}-${REGIONS[paper]}`);
  if (!format.resolvedOptions().hour12) return iso.slice(11, 16);
  return format.format(new Date(`${iso.slice(0, 16)}Z`)).replace(/\s/g, '\u00a0');
}
