import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { BuildWish } from './BuildWish.ts';
import type { Core } from './Core.ts';
import { storedCard } from './cardStore.ts';
import { makeParts, type SiteFacts } from './makeParts.ts';
import { makeSiteJob } from './makeSiteJob.ts';
import { siteLanguage } from './packetOf.ts';
import type { Places } from './places.ts';
import type { Printer } from './printer.ts';
import { jobMark } from './programMark.ts';
import type { JobFolder } from './readFolders.ts';
import type { SiteJob } from './SiteJob.ts';
import type { Words } from './words.ts';
import { writeData } from './writeData.ts';
import { renderPages, writePages } from './writePages.ts';

/** What the building of one job needs beside its folder. */
export interface Building {
  /** Where the site is made before it is moved into place. */
  readonly staging: string;
  readonly places: Places;
  readonly wish: BuildWish;
  readonly core: Core;
  readonly words: Words;
  readonly facts: SiteFacts;
  /** Missing where no PDFs are made. */
  readonly printer: Printer | undefined;
  /** Fingerprint of the program; a job it has built from the same folder is not built again. Missing: all are. */
  readonly program: string | undefined;
}

/** Renders a job's pages; when a sheet fails, what stands in the output is left, and the job says which and why. */
async function render(job: SiteJob, { words, facts }: Building) {
  const parts = makeParts([job], words, { ...facts, pages: 'jobs' });
  const pages = await renderPages(parts);
  if (parts.failures.length === 0) return { job, pages };
  const lines = parts.failures.map((failure) =>
    words.say(siteLanguage)('site.problem.sheet', { ...failure, file: `jobs/${job.slug}/job.yaml` }),
  );
  const problems = [...job.problems, ...new Set(lines)];
  return { job: { ...job, pages: 'keep', stale: true, problems } satisfies SiteJob, pages: undefined };
}

function ordersOf({ slug, bundles }: SiteJob, staging: string) {
  return bundles.map(({ name }) => ({
    html: join(staging, slug, 'print', `${name}.html`),
    pdf: join(staging, slug, `${name}.pdf`),
  }));
}

/** Works out one job, writes its pages aside and orders its PDFs; of a job that is not wished for gives what the last build knew. */
export async function buildJob(folder: JobFolder, building: Building): Promise<SiteJob> {
  const { staging, places, wish, printer } = building;
  const { slug } = folder;
  const stored = storedCard(places.cache, places.output, slug);
  const asked = wish.names.length === 0 || wish.names.includes(slug);
  if (stored && !asked) return stored;
  const mark = building.program && jobMark(folder.folder, building.program);
  const printed = existsSync(join(places.output, slug, 'packet.pdf'));
  if (stored && mark && stored.mark === mark && (printed || !printer)) return stored;
  wish.progress(`Working out ${slug}`);
  // A job that was never printed will be now: the browser comes up meanwhile.
  if (!printed) printer?.warm();
  const made = makeSiteJob(folder, { ...building, output: places.output });
  const { job, pages } = await render(made, building);
  if (!pages || job.pages === 'keep') return job;
  writePages(pages, staging);
  writeData(job, staging);
  printer?.add(ordersOf(job, staging));
  return job.problems.length === 0 && mark ? { ...job, mark } : job;
}
