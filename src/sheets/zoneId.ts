import type { Packet } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { floorMark } from './floorMark.ts';

/**
 * The id of a zone's drawings: each floor counts its zones from one, so that the number alone is none.
 *
 * @example
 * zoneId({ surfaces: [{ name: 'hall' }, { name: 'bath' }] }, { name: 'bath' }, { number: 1 }) //=> 'zone-floor-2-1'
 */
export function zoneId(
  packet: { readonly surfaces: readonly Pick<Packet['surfaces'][number], 'name'>[] },
  { name }: Pick<Packet['surfaces'][number], 'name'>,
  { number }: Pick<Zone, 'number'>,
): string {
  return ['zone', floorMark(packet, name), number].filter(Boolean).join('-');
}
