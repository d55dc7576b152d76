import type { Packet } from '../packet/Packet.ts';

/**
 * What tells the pages and drawings of a floor from those of the first, in addresses and ids. Its place among the floors, as a
 * name may hold what neither may.
 *
 * @example
 * floorMark({ surfaces: [{ name: 'hall' }, { name: 'guest bath' }] }, 'guest bath') //=> 'floor-2'
 * floorMark({ surfaces: [{ name: 'hall' }, { name: 'guest bath' }] }, 'hall') //=> ''
 */
export function floorMark(
  { surfaces }: { readonly surfaces: readonly Pick<Packet['surfaces'][number], 'name'>[] },
  name: string,
): string {
  const at = surfaces.findIndex((one) => one.name === name);
  return at > 0 ? `floor-${at + 1}` : '';
}
