import { KG_PER_LB } from '../measure/index.ts';
import type { Packet } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';

/**
 * Mortar of one zone in kg, rounded to tenths of the unit that the job prints in such a way that the figures of all zones add up to
 * that of the tally as printed: each takes what the zones up to it come to, less what those before it took.
 *
 * @param massOf what a zone takes in kg, where it is not what the job's own trowel leaves.
 */
export function zoneMass(
  { surfaces, spec }: Pick<Packet, 'surfaces' | 'spec'>,
  zone: Zone,
  massOf: (zone: Zone) => number = ({ mortarKg }) => mortarKg,
): number {
  const unit = (spec.print.system === 'mm' ? 1 : KG_PER_LB) / 10;
  const zones = surfaces.flatMap((surface) => surface.zones);
  const at = zones.indexOf(zone);
  const upTo = (count: number) =>
    Math.round(zones.slice(0, count).reduce((sum, one) => sum + massOf(one), 0) / unit);
  return (upTo(at + 1) - upTo(at)) * unit;
}
