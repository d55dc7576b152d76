import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { printPdf } from '../../src/site/printPdf.ts';
import { readWords } from '../../src/site/words.ts';
import { writeFile } from '../../src/site/writeFile.ts';
import { browserPath, home, patience } from './support/browserPath.ts';
import { buildJobs } from './support/buildJobs.ts';
import { fortyJobs } from './support/fortyJobs.ts';
import type { PrintedPage } from './support/PrintedPage.ts';
import { readPrinted } from './support/readPrinted.ts';

const slug = 'job-30';
const say = readWords(join(home, 'layouts', 'words')).say('pt');
/** The name of a row: a line has one, two, or the first and the last. */
const row = /\b[KLMN]{2}\d+[ab]?\b/g;

describe('found spaces of which a page holds all but a line or two', () => {
  let pages: readonly PrintedPage[] = [];
  let expected = 0;

  beforeAll(async () => {
    const site = await buildJobs({ [slug]: fortyJobs()[slug]! });
    const [zone] = site.jobs[0]!.packet.surfaces[0]!.zones;
    expected = zone!.found.length;
    const browser = await openBrowser(browserPath());
    const pdf = join(site.output, slug, 'packet.pdf');
    writeFile(pdf, await printPdf(await browser.newPage(), join(site.output, slug, 'print', 'packet.html')));
    await browser.close();
    const printed = await readPrinted(pdf);
    pages = printed.pages.filter(
      ({ text }) => text.includes(say('sheet.zone.question', { zone: 1 })) && text.match(row),
    );
  }, patience);

  test('stand on two pages, each with a third of their rows at least', () => {
    const counts = pages.map(({ text }) => text.match(row)!.length);
    expect(counts.length).toBe(2);
    expect(Math.min(...counts)).toBeGreaterThan(expected / 3);
  });

  test('have the heads of their columns on each', () => {
    for (const { text } of pages) expect(text).toContain(say('sheet.zone.foundSpace'));
  });
});
