import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { SiteJob } from './SiteJob.ts';
import { writeFile } from './writeFile.ts';

function cardFile(cache: string, slug: string): string {
  return join(cache, 'cards', `${slug}.json`);
}

/** Keeps what the index says of a job, so that other jobs can be built without it. */
export function storeCard(cache: string, job: SiteJob): void {
  const { slug, mark, lang, card, problems, stale } = job;
  writeFile(cardFile(cache, slug), JSON.stringify({ slug, mark, lang, card, problems, stale }));
}

/** A job as it was last built, for the index only; nothing when it never was. */
export function storedCard(cache: string, output: string, slug: string): SiteJob | undefined {
  const file = cardFile(cache, slug);
  if (!existsSync(file) || !existsSync(join(output, slug, 'index.html'))) return undefined;
  return {
    ...JSON.parse(readFileSync(file, 'utf8')),
    sheets: [],
    bundles: [],
    notes: [],
    files: [],
    pages: 'keep',
  };
}

export function dropCard(cache: string, slug: string): void {
  rmSync(cardFile(cache, slug), { force: true });
}
