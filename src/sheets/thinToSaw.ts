import type { Fault } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';

/** A strip that is narrower than its tile is thick. */
export interface ThinStrip {
  readonly fault: Fault;
  readonly thickness: Ticks;
}

/**
 * Strips of a floor that are narrower than their tile is thick: a blade breaks such a strip rather than parts it. From memory: it is a rule of
 * the hand that no standard gives.
 */
export function thinToSaw(
  { spec }: Pick<Packet, 'spec'>,
  { faults, pieces }: PacketSurface,
): readonly ThinStrip[] {
  const thicknessOf = (id: string) => {
    const key = pieces.find((piece) => piece.id === id)?.tile;
    return spec.tiles.find((tile) => tile.key === key)?.thickness ?? 0;
  };
  return faults
    .filter(({ code }) => code === 'thinStrip')
    .map((fault) => ({ fault, thickness: Math.max(0, ...fault.pieces.map(thicknessOf)) }))
    .filter(({ fault, thickness }) => Number(fault.figures.size) < thickness);
}
