import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { dropCard, storeCard } from './cardStore.ts';
import { galleryFile } from './galleryPages.ts';
import type { Places } from './places.ts';
import { isSlug } from './readFolders.ts';
import type { SiteJob } from './SiteJob.ts';
import { swapFolder } from './swapFolder.ts';
import { writeFile } from './writeFile.ts';

/** Output folders of jobs that are gone. Only what looks like a job's pages is ever removed. */
function goneJobs(jobs: readonly SiteJob[], output: string): readonly string[] {
  if (!existsSync(output)) return [];
  const here = new Set(jobs.map((job) => job.slug));
  return readdirSync(output, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && isSlug(entry.name) && !here.has(entry.name))
    .map((entry) => entry.name)
    .filter((slug) => existsSync(join(output, slug, 'index.html')));
}

/** A finished job keeps its packet beside its job file and is built from that from then on. */
function keepFinished(job: SiteJob, jobs: string): void {
  const file = join(jobs, job.slug, 'packet.json');
  if (job.packet?.job.status !== 'finished' || job.stale || existsSync(file)) return;
  writeFile(file, JSON.stringify(job.packet));
}

/** Moves what was built into the output, a job at a time, then the pages of patterns by language, the index last. */
export function publish(
  jobs: readonly SiteJob[],
  languages: readonly string[],
  staging: string,
  places: Places,
): void {
  const aside = join(staging, '.aside');
  const move = (name: string) => swapFolder(join(staging, name), join(places.output, name), aside);
  move('assets');
  for (const job of jobs) {
    if (job.pages === 'write') {
      move(job.slug);
      keepFinished(job, places.jobs);
    }
    storeCard(places.cache, job);
  }
  for (const slug of goneJobs(jobs, places.output)) {
    rmSync(join(places.output, slug), { recursive: true, force: true });
    dropCard(places.cache, slug);
  }
  for (const lang of languages) move(galleryFile(lang));
  move('form.html');
  move('index.html');
}
