import type { Packet } from '../packet/Packet.ts';
import type { JobCard } from './SiteJob.ts';
import { thumbnail } from './thumbnail.ts';

const squareFeetPerM2 = 10.7639104;

function printSiteArea(areaM2: number, system: string): string {
  return system === 'inches' ? `${(areaM2 * squareFeetPerM2).toFixed(0)} sq ft` : `${areaM2.toFixed(1)} m²`;
}

/** What the index of jobs shows of one. */
export function jobCard(packet: Packet): JobCard {
  const { title, status, revision, date, owner } = packet.job;
  const areaM2 = packet.surfaces.reduce((sum, surface) => sum + surface.areaM2, 0);
  const area = printSiteArea(areaM2, packet.spec.print.system);
  return { title, status, revision, date, owner, area, thumbnail: thumbnail(packet.surfaces[0]) };
}
