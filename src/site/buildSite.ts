import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { hashAssets, readAssets } from './assets.ts';
import { type Core, core as ownCore } from './Core.ts';
import { storedCard } from './cardStore.ts';
import { formPage } from './formPage.ts';
import { inlinedSaw } from './inlined.ts';
import { makeParts, type SiteFacts } from './makeParts.ts';
import { makeSiteJob } from './makeSiteJob.ts';
import { siteLanguage } from './packetOf.ts';
import type { Places } from './places.ts';
import { printAll } from './printAll.ts';
import { publish } from './publish.ts';
import { readFolders } from './readFolders.ts';
import type { SiteJob } from './SiteJob.ts';
import { sweepCache } from './sweepCache.ts';
import { readWords, type Words } from './words.ts';
import { writeData } from './writeData.ts';
import { renderPages, writeFile, writePages } from './writePages.ts';

export interface BuildWish {
  /** Jobs to build; all when there are none. */
  readonly names: readonly string[];
  readonly browser?: string;
  readonly progress: (text: string) => void;
  /** Another core than the program's own, for tests. */
  readonly core?: Core;
  /** Another folder of sheet templates, for tests. */
  readonly sheetFolder?: string;
}

export interface Built {
  readonly jobs: readonly SiteJob[];
  /** One ready line each. */
  readonly problems: readonly string[];
}

function readJobs(places: Places, wish: BuildWish, core: Core, words: Words): readonly SiteJob[] {
  return readFolders(places.jobs).map((folder) => {
    const asked = wish.names.length === 0 || wish.names.includes(folder.slug);
    const stored = asked ? undefined : storedCard(places.cache, places.output, folder.slug);
    if (stored) return stored;
    wish.progress(`Working out ${folder.slug}`);
    return makeSiteJob(folder, { core, words, output: places.output });
  });
}

/** Renders all pages; jobs whose sheets fail are then left as they stand, and the rest is rendered without them. */
async function render(jobs: readonly SiteJob[], words: Words, facts: SiteFacts) {
  const parts = makeParts(jobs, words, facts);
  const pages = await renderPages(parts);
  if (parts.failures.length === 0) return { jobs, pages };
  const mended = jobs.map((job): SiteJob => {
    const lines = parts.failures
      .filter((failure) => failure.slug === job.slug)
      .map((failure) =>
        words.say(siteLanguage)('site.problem.sheet', {
          ...failure,
          file: `jobs/${job.slug}/job.yaml`,
        }),
      );
    if (lines.length === 0) return job;
    return { ...job, pages: 'keep', stale: true, problems: [...job.problems, ...new Set(lines)] };
  });
  return { jobs: mended, pages: await renderPages(makeParts(mended, words, facts)) };
}

async function print(jobs: readonly SiteJob[], staging: string, places: Places, wish: BuildWish) {
  if (!wish.browser) return [];
  const orders = jobs
    .filter((job) => job.pages === 'write')
    .flatMap(({ slug, bundles }) =>
      bundles.map(({ name }) => ({
        html: join(staging, slug, 'print', `${name}.html`),
        pdf: join(staging, slug, `${name}.pdf`),
      })),
    );
  const styles = hashAssets(readAssets(places.home));
  const store = places.pdfs;
  return printAll(orders, { browser: wish.browser, store, styles, progress: wish.progress });
}

/**
 * Builds the site. All is written to a folder aside and moved into place when it is complete, so a stop or a
 * problem leaves what stood there before.
 */
export async function buildSite(places: Places, wish: BuildWish): Promise<Built> {
  const words = readWords(join(places.layouts, 'words'));
  const read = readJobs(places, wish, wish.core ?? ownCore, words);
  const staging = join(places.cache, `site-${process.pid}`);
  try {
    wish.progress('Writing pages');
    const facts = {
      pdfs: wish.browser !== undefined,
      sheetFolder: wish.sheetFolder ?? 'sheets',
      inlined: inlinedSaw(places.home),
    };
    const { jobs, pages } = await render(read, words, facts);
    writePages(pages, staging);
    for (const [path, content] of readAssets(places.home)) writeFile(join(staging, path), content);
    writeData(jobs, staging);
    writeFile(join(staging, 'form.html'), await formPage(places, words));
    const failed = await print(jobs, staging, places, wish);
    publish(jobs, staging, places);
    sweepCache(places);
    return { jobs, problems: [...jobs.flatMap((job) => job.problems), ...failed] };
  } finally {
    rmSync(staging, { recursive: true, force: true });
  }
}
