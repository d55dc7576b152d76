import type { PacketSurface } from '../packet/Packet.ts';

/**
 * What a job wished for on an axis, such as `tile sink cabinet`, as its kind and the edge it is meant at, which words can be put for: of a
 * doorway the line under its door.
 *
 * @example wishFigures({ openings: [] }, 'tile sink cabinet') //=> { wish: 'tile', on: 'sink cabinet' }
 * @example wishFigures({ openings: [{ name: 'hall' }] }, 'joint hall') //=> { wish: 'joint', on: 'hall:line' }
 */
export function wishFigures(
  { openings }: { readonly openings: readonly Pick<PacketSurface['openings'][number], 'name'>[] },
  wish: string,
): { readonly wish: string; readonly on: string } {
  const blank = wish.indexOf(' ');
  const [kind, name] = [wish.slice(0, blank), wish.slice(blank + 1)];
  return { wish: kind, on: openings.some((opening) => opening.name === name) ? `${name}:line` : name };
}
