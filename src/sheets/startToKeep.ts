import type { AxisStart } from '../layout/Layout.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeAsNamed } from './edgeAsNamed.ts';

/**
 * The best start as a job file names it, such as `along: joint centred between D-A and B-C`, so that it stays when a reading is
 * corrected; empty where the job names its start already, or where it was no plain centring.
 */
export function startToKeep({ start, turn }: Pick<PacketSurface, 'start' | 'turn'>): string {
  const slanted = Math.abs(turn / 90 - Math.round(turn / 90)) > 0.12;
  if (slanted) return '';
  const named = (['along', 'across'] as const).flatMap((axis) => {
    const text = centred(start[axis]);
    return text ? [`${axis}: ${text}`] : [];
  });
  return named.join(', ');
}

function centred({ wish, what, run }: AxisStart): string | undefined {
  if (wish !== 'best' || !run || (what !== 'joint' && what !== 'tile')) return undefined;
  return `${what} centred between ${edgeAsNamed(run.from)} and ${edgeAsNamed(run.to)}`;
}
