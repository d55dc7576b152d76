import { demos } from '../../sheets/demos.ts';
import type { ZoneToBegin } from './judgeShutOff.ts';

/** A zone as it is begun, and what is told of it. */
export interface ToldZone {
  readonly beyond: string | undefined;
  readonly zone: ZoneToBegin;
}

const STEPPED_OVER = new Set(['flange', 'pipe']);

/** Each zone of the demos that one leaves by a doorway, as it is begun. */
export const demoZones = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap((surface) => {
    const door = surface.edges.find(({ id }) => id === `${surface.zones[0]?.wayOut}:line`);
    if (!door) return [];
    const ringOf = (name: string) => surface.pieces.find(({ id }) => id === name)!.shape.outer;
    const solids = surface.obstacles.filter(
      ({ edges }) => !edges.some(({ meets }) => STEPPED_OVER.has(meets)),
    );
    return surface.zones.map((zone, i) => ({
      slug,
      number: zone.number,
      beyond: zone.beyond,
      zone: {
        outline: surface.outline,
        solids: solids.map(({ ring }) => ring),
        door: [door.from, door.to] as const,
        laid: surface.zones.slice(0, i).flatMap(({ pieces }) => pieces.map(ringOf)),
        own: zone.pieces.map((id) => ({ id, ring: ringOf(id) })),
        first: zone.first,
      },
    }));
  }),
);
