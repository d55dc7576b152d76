import type { Packet } from '../../../src/packet/Packet.ts';
import { sawFigure } from './sawFigures.ts';

const ticksPerSixtyFourth = 127;
const sixtyFourthsPerFoot = 768;

/** A length as a tape is read, to 1/64 in or to 0.1 mm: `3 ft 7 3/16 in`, `1098 mm`. */
export function tapeFigure(ticks: number, system: Packet['spec']['print']['system']): string {
  if (system === 'mm') return `${sawFigure(ticks, 'mm')} mm`;
  const all = Math.round(ticks / ticksPerSixtyFourth);
  const feet = Math.floor(all / sixtyFourthsPerFoot);
  const inches = sawFigure((all - feet * sixtyFourthsPerFoot) * ticksPerSixtyFourth, 'inches');
  if (feet === 0) return `${inches} in`;
  if (inches === '0') return `${feet} ft`;
  // After feet a fraction stands with a 0.
  return `${feet} ft ${/^\d+\//.test(inches) ? '0 ' : ''}${inches} in`;
}

/**
 * A moment as a calendar of that language names it, without the year: `Mon, Mar 8` and `10:45`; on letter paper, in the languages that
 * count twice twelve hours in the United States (English and Spanish, common practice), `10:45 AM`, a full hour `8 AM`.
 */
export function momentFigures(
  moment: string,
  lang: string,
  paper: Packet['spec']['print']['paper'],
): readonly [string, string] {
  const [day = '', clock = ''] = moment.split('T');
  const named = new Intl.DateTimeFormat(lang, {
    weekday: 'short',
    month: 'short',
    day: 'numeric',
    timeZone: 'UTC',
  });
  const [hours = '', minutes = ''] = clock.split(':');
  const half = { en: ['AM', 'PM'], es: ['a.m.', 'p.m.'] }[lang]?.[Number(hours) < 12 ? 0 : 1];
  const told =
    paper === 'letter' && half
      ? `${Number(hours) % 12 || 12}${minutes === '00' ? '' : `:${minutes}`} ${half}`
      : clock;
  return [named.format(new Date(`${day}T12:00Z`)), told];
}

/** Every size for the saw that a text names: `7 5/8`, `5/8`, and whole numbers beside them are left out. */
export function fractionsIn(text: string): readonly string[] {
  return text.replace(/\s+/g, ' ').match(/(?<![\d/.])(?:\d+ )?\d+\/(?:2|4|8|16|32|64)(?!\d)/g) ?? [];
}
