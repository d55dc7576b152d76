import { join } from 'node:path';
import { jsonSchema } from '../job/jsonSchema.ts';
import type { SiteJob } from './SiteJob.ts';
import { writeFile } from './writePages.ts';

/** Writes the data files of every job that has pages: the packet as it is, and what other programs open; and the schema of job files for editors. */
export function writeData(jobs: readonly SiteJob[], folder: string): void {
  writeFile(join(folder, 'assets', 'job.schema.json'), JSON.stringify(jsonSchema(), null, 1));
  for (const { packet, slug, files, pages } of jobs) {
    if (!packet || pages === 'keep') continue;
    writeFile(join(folder, slug, 'packet.json'), JSON.stringify(packet));
    for (const { name, text } of files) writeFile(join(folder, slug, name), text);
  }
}
