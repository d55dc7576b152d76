import { join } from 'node:path';
import { cutsCsv } from './cutsCsv.ts';
import type { SiteJob } from './SiteJob.ts';
import { writeFile } from './writePages.ts';

/** Writes the data files of every job that has pages: the packet as it is, and its cuts as a table. */
export function writeData(jobs: readonly SiteJob[], folder: string): void {
  for (const { packet, slug, pages } of jobs) {
    if (!packet || pages === 'keep') continue;
    writeFile(join(folder, slug, 'packet.json'), JSON.stringify(packet));
    writeFile(join(folder, slug, 'cuts.csv'), cutsCsv(packet));
  }
}
