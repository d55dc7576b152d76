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

const slug = 'job-35';
const say = readWords(join(home, 'layouts', 'words')).say('pt');
/** The name of a row: a line has one, two, or the first and the last. */
const row = /\b[KLMN]{2}\d+[ab]?\b/g;

describe('found spaces that no page holds', () => {
  let pages: readonly PrintedPage[] = [];

  beforeAll(async () => {
    const site = await buildJobs({ [slug]: fortyJobs()[slug]! });
    const browser = await openBrowser(browserPath());
    const pdf = join(site.output, slug, 'packet.pdf');
    writeFile(pdf, await printPdf(await browser.newPage(), join(site.output, slug, 'print', 'packet.html')));
    await browser.close();
    const printed = await readPrinted(pdf);
    pages = printed.pages.filter(
      ({ text }) => text.includes(say('sheet.zone.title', { zone: 1 })) && text.match(row),
    );
  }, patience);

  test('stand on two pages, none with less than half of what the other has', () => {
    const counts = pages.map(({ text }) => text.match(row)!.length);
    expect(counts.length).toBe(2);
    expect(Math.min(...counts)).toBeGreaterThan(Math.max(...counts) / 2);
  });

  test('have the heads of their columns on each', () => {
    for (const { text } of pages) expect(text).toContain(say('sheet.zone.foundSpace'));
  });
});
