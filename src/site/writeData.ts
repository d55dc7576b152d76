import { join } from 'node:path';
import { jsonSchema } from '../job/jsonSchema.ts';
import type { SiteJob } from './SiteJob.ts';
import { writeFile } from './writeFile.ts';

/** Writes the data files of a job that has pages: the packet as it is, and what other programs open. */
export function writeData({ packet, slug, files, pages }: SiteJob, folder: string): void {
  if (!packet || pages === 'keep') return;
  writeFile(join(folder, slug, 'packet.json'), JSON.stringify(packet));
  for (const { name, text } of files) writeFile(join(folder, slug, name), text);
}

/** Writes the schema of job files, for editors. */
export function writeSchema(folder: string): void {
  writeFile(join(folder, 'assets', 'job.schema.json'), JSON.stringify(jsonSchema(), null, 1));
}
