import type { Packet } from '../packet/Packet.ts';

/** Whether the tile of a job lies: nothing is ordered, booked or settled for it any more. */
export function isLaid({ job }: Pick<Packet, 'job'>): boolean {
  return job.status === 'finished';
}
