import type { Packet } from '../packet/Packet.ts';
import { floorName } from './floorName.ts';

/**
 * Words about one floor with its name after them, where the job has several: their walls and pieces bear the same letters.
 *
 * @example
 * floorOf({ surfaces: [{ name: 'hall' }, { name: 'bath' }] }, { name: 'bath' }, 'Taper that shows') //=> 'Taper that shows · bath'
 * floorOf({ surfaces: [{ name: 'floor' }] }, { name: 'floor' }, 'Taper that shows') //=> 'Taper that shows'
 */
export function floorOf(
  packet: { readonly surfaces: readonly Pick<Packet['surfaces'][number], 'name'>[] },
  { name }: Pick<Packet['surfaces'][number], 'name'>,
  words: string,
): string {
  return [words, floorName(packet, name)].filter((one) => one !== '').join(' · ');
}
