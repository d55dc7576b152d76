import type { Packet } from '../packet/Packet.ts';

/**
 * The name of a floor where a sheet has to say it: empty where the job has one floor alone, which needs no name.
 *
 * @example
 * floorName({ surfaces: [{ name: 'hall' }, { name: 'bath' }] }, 'bath') //=> 'bath'
 * floorName({ surfaces: [{ name: 'floor' }] }, 'floor') //=> ''
 */
export function floorName(
  { surfaces }: { readonly surfaces: readonly Pick<Packet['surfaces'][number], 'name'>[] },
  name: string,
): string {
  return surfaces.length > 1 ? name : '';
}
