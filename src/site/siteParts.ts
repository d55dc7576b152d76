import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { core } from './Core.ts';
import { formPage } from './formPage.ts';
import { inlinedSaw } from './inlined.ts';
import { makeParts, type Parts } from './makeParts.ts';
import { makeSiteJob } from './makeSiteJob.ts';
import { placesUnder } from './places.ts';
import { readFolders } from './readFolders.ts';
import { readWords } from './words.ts';
import { writeData, writeSchema } from './writeData.ts';
import { writeFile } from './writeFile.ts';

/** Pages of jobs that are gone would stay, because Eleventy removes nothing. */
function removeGone(served: string, slugs: readonly string[]): void {
  if (!existsSync(served)) return;
  for (const name of readdirSync(served, { withFileTypes: true })) {
    const gone = name.isDirectory() && name.name !== 'assets' && !slugs.includes(name.name);
    if (gone) rmSync(join(served, name.name), { recursive: true, force: true });
  }
}

/** What `npm run dev` serves: all jobs as they are now, from the program as it is now. */
export default async function siteParts(): Promise<Parts> {
  const places = placesUnder(process.cwd());
  const served = join(places.cache, 'dev');
  const words = readWords(join(places.layouts, 'words'));
  const jobs = readFolders(places.jobs).map((folder) => makeSiteJob(folder, { core, words, output: served }));
  removeGone(
    served,
    jobs.map((job) => job.slug),
  );
  writeSchema(served);
  for (const job of jobs.filter((one) => !one.stale)) writeData(job, served);
  writeFile(join(served, 'form.html'), await formPage(places, words));
  for (const line of jobs.flatMap((job) => job.problems)) process.stderr.write(`${line}\n`);
  return makeParts(jobs, words, {
    pdfs: false,
    sheetFolder: 'sheets',
    inlined: inlinedSaw(places.home),
  });
}
