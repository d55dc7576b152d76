import type { Limit } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** What a limit is of: its rule, and the tile and the floor where the job has more than one. */
export function limitName(
  { packet, say }: Pick<SheetContext, 'packet' | 'say'>,
  { rule, tile, surface }: Limit,
): string {
  const { tiles } = packet.spec;
  const named = [
    say(`limit.${rule}`),
    ...(tile !== undefined && tiles.length > 1 ? [tiles.find(({ key }) => key === tile)?.name ?? tile] : []),
    ...(surface !== undefined && packet.surfaces.length > 1 ? [surface] : []),
  ];
  return named.join(': ');
}
