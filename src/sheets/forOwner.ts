import type { PacketSurface } from '../packet/Packet.ts';
import { asSaid } from './asSaid.ts';
import type { SheetContext } from './SheetContext.ts';

/** A floor whose drawing an owner can read: as its words call what stands in it, and a flange by what stands on that. */
export function forOwner(
  { packet, say }: Pick<SheetContext, 'packet' | 'say'>,
  surface: PacketSurface,
): PacketSurface {
  const { obstacles = [] } = packet.spec.surfaces.find(({ name }) => name === surface.name) ?? {};
  const flanges = obstacles.filter(({ meets }) => meets === 'flange').map(({ name }) => name);
  if (flanges.length === 0) return asSaid({ say }, surface);
  const toilet = say('thing.toilet');
  const called = (name: string) => (flanges.includes(name) ? toilet : name);
  return asSaid(
    { say },
    {
      ...surface,
      obstacles: surface.obstacles.map((one) => ({ ...one, name: called(one.name) })),
      edges: surface.edges.map((edge) => ({ ...edge, id: edge.id.replace(/^[^:]+(?=:)/, called) })),
    },
  );
}
