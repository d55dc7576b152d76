import { printArea } from '../measure/index.ts';
import type { Packet } from '../packet/Packet.ts';
import type { JobCard } from './SiteJob.ts';
import { thumbnail } from './thumbnail.ts';

/** What the index of jobs shows of one. */
export function jobCard(packet: Packet): JobCard {
  const { title, status, revision, date, owner } = packet.job;
  const areaM2 = packet.surfaces.reduce((sum, surface) => sum + surface.areaM2, 0);
  const area = printArea(areaM2, packet.spec.print.system);
  return { title, status, revision, date, owner, area, thumbnail: thumbnail(packet.surfaces[0]) };
}
