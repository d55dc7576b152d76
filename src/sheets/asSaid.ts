import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

/** A floor whose drawing calls what stands in it as the words beside it do: a thing of a known kind by its kind in the sheet's language. */
export function asSaid({ say }: Pick<SheetContext, 'say'>, surface: PacketSurface): PacketSurface {
  const names = surface.obstacles.map(({ name }) => name);
  const said = new Map(names.map((name) => [name, sayThing(say, name)]));
  // Two things that one language calls alike are told apart by the names that the job has for them.
  if (names.every((name) => said.get(name) === name) || new Set(said.values()).size < said.size)
    return surface;
  const called = (name: string) => said.get(name) ?? name;
  return {
    ...surface,
    obstacles: surface.obstacles.map((one) => ({ ...one, name: called(one.name) })),
    edges: surface.edges.map((edge) => ({ ...edge, id: edge.id.replace(/^[^:]+(?=:)/, called) })),
  };
}
