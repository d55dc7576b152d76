import type { Packet } from '../packet/Packet.ts';

/** Layers of the old floor that nobody may lift before a laboratory has answered: those that a stop of the job names. */
export function stoppedLayers({ limits }: Pick<Packet, 'limits'>): ReadonlySet<string> {
  return new Set(
    limits.filter(({ rule, pass }) => rule === 'house.asbestos' && !pass).flatMap(({ at = [] }) => at),
  );
}
