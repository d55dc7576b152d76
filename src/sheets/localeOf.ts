import type { Packet } from '../packet/Packet.ts';

/** Where a paper is printed on: letter in the United States, A4 where Europe's customs hold, as regions of a locale. */
const REGIONS: Readonly<Record<Packet['spec']['print']['paper'], string>> = { letter: 'US', a4: '150' };

/**
 * The locale by which a sheet writes its clock and its numbers: its language where such paper is used.
 *
 * @example localeOf('es', 'letter') //=> 'es-US'
 */
export function localeOf(lang: string, paper: Packet['spec']['print']['paper']): string {
  return `${lang}-${REGIONS[paper]}`;
}
