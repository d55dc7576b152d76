import type { Fault } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { thickestOf } from './thickestOf.ts';

/** A strip that is narrower than its tile is thick. */
export interface ThinStrip {
  readonly fault: Fault;
  readonly thickness: Ticks;
}

/**
 * Strips of a floor that are narrower than their tile is thick: a blade breaks such a strip rather than parts it. From memory: it is a rule of
 * the hand that no standard gives.
 */
export function thinToSaw(packet: Pick<Packet, 'spec'>, surface: PacketSurface): readonly ThinStrip[] {
  return surface.faults
    .filter(({ code }) => code === 'thinStrip')
    .map((fault) => ({ fault, thickness: thickestOf(packet, surface, fault.pieces) }))
    .filter(({ fault, thickness }) => Number(fault.figures.size) < thickness);
}
