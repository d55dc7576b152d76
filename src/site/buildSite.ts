import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { hashAssets, readAssets } from './assets.ts';
import type { BuildWish } from './BuildWish.ts';
import { browserMark } from './browserMark.ts';
import { type Building, buildJob } from './buildJob.ts';
import { core } from './Core.ts';
import { formPage } from './formPage.ts';
import { inlinedSaw } from './inlined.ts';
import { makeParts } from './makeParts.ts';
import type { Places } from './places.ts';
import { startPrinter } from './printer.ts';
import { programMark } from './programMark.ts';
import { publish } from './publish.ts';
import { readFolders } from './readFolders.ts';
import type { SiteJob } from './SiteJob.ts';
import { sweepCache } from './sweepCache.ts';
import { readWords } from './words.ts';
import { writeSchema } from './writeData.ts';
import { writeFile } from './writeFile.ts';
import { renderPages, writePages } from './writePages.ts';

export interface Built {
  readonly jobs: readonly SiteJob[];
  /** One ready line each. */
  readonly problems: readonly string[];
}

type Assets = ReturnType<typeof readAssets>;

function programOf({ home, layouts }: Places, browser: string | undefined): string {
  return `${programMark(home, layouts)} ${browser ? browserMark(browser) : 'no browser'}`;
}

function prepare(places: Places, wish: BuildWish, assets: Assets): Building {
  const { home, pdfs: store } = places;
  const { browser, progress } = wish;
  const ownPrinter = () =>
    browser ? startPrinter({ browser, store, styles: hashAssets(assets), progress }) : undefined;
  return {
    places,
    wish,
    staging: join(places.cache, `site-${process.pid}`),
    core: wish.core ?? core,
    words: readWords(join(places.layouts, 'words')),
    facts: {
      pdfs: browser !== undefined,
      sheetFolder: wish.sheetFolder ?? 'sheets',
      inlined: inlinedSaw(home),
    },
    program: wish.program ?? (wish.core ? undefined : programOf(places, browser)),
    printer: wish.printer ?? ownPrinter(),
  };
}

async function buildJobs(building: Building): Promise<readonly SiteJob[]> {
  const jobs: SiteJob[] = [];
  for (const folder of readFolders(building.places.jobs)) jobs.push(await buildJob(folder, building));
  return jobs;
}

async function buildAside(building: Building, assets: Assets): Promise<Built> {
  const { places, words, facts, staging, printer } = building;
  for (const [path, content] of assets) writeFile(join(staging, path), content);
  writeSchema(staging);
  // The form's script is bundled by a process of its own while the jobs are worked out.
  const [form, jobs] = await Promise.all([formPage(places, words), buildJobs(building)]);
  writeFile(join(staging, 'form.html'), form);
  writePages(await renderPages(makeParts(jobs, words, { ...facts, pages: 'index' })), staging);
  const failed = (await printer?.done()) ?? [];
  // A job whose PDF is missing is built again next time.
  const made = failed.length > 0 ? jobs.map((job) => ({ ...job, mark: undefined })) : jobs;
  publish(made, words.languages, staging, places);
  return { jobs, problems: [...jobs.flatMap((job) => job.problems), ...failed] };
}

/**
 * Builds the site. All is written to a folder aside and moved into place when it is complete, so a stop or a
 * problem leaves what stood there before.
 */
export async function buildSite(places: Places, wish: BuildWish): Promise<Built> {
  const assets = readAssets(places.home);
  const building = prepare(places, wish, assets);
  try {
    return await buildAside(building, assets);
  } finally {
    await building.printer?.close();
    sweepCache(places);
    rmSync(building.staging, { recursive: true, force: true });
  }
}
