import { statSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../../../src/site/openBrowser.ts';
import { printPdf } from '../../../src/site/printPdf.ts';
import { readWords } from '../../../src/site/words.ts';
import { writeFile } from '../../../src/site/writeFile.ts';
import { atOnce } from './atOnce.ts';
import { browserPath, home, patience } from './browserPath.ts';
import { type BuiltSite, buildJobs } from './buildJobs.ts';
import type { PrintedFile } from './PrintedPage.ts';
import { checkBars } from './pageFaults.ts';
import { readPrinted } from './readPrinted.ts';
import { findings, type Visit, visitPage } from './visitPage.ts';
import { wellSet } from './wellSet.ts';

const words = readWords(join(home, 'layouts', 'words'));

/** Tests that the packets of jobs, slug → job file, are printed as they should be, whole. */
export function printedWell(what: string, jobs: Readonly<Record<string, string>>): void {
  const slugs = Object.keys(jobs);
  describe(what, () => {
    let site: BuiltSite;
    let visits: readonly Visit[] = [];
    let files: readonly PrintedFile[] = [];

    beforeAll(async () => {
      const path = browserPath();
      site = await buildJobs(jobs);
      const browser = await openBrowser(path);
      const pages = slugs.map((slug) => `${slug}/print/packet.html`);
      visits = await atOnce(pages, (page) =>
        visitPage(browser, site.output, page, { access: false, layout: true }),
      );
      files = await atOnce(slugs, async (slug) => {
        const printing = await browser.newPage();
        const pdf = join(site.output, slug, 'packet.pdf');
        writeFile(pdf, await printPdf(printing, join(site.output, slug, 'print', 'packet.html')));
        return readPrinted(pdf);
      });
      await browser.close();
    }, patience);

    const perFile = (find: (file: PrintedFile) => readonly string[]) =>
      files.flatMap((file, at) => find(file).map((line) => `${slugs[at]} ${line}`));

    test('were built', () => {
      expect(files.map(({ pages }) => pages.length > 8)).toEqual(slugs.map(() => true));
    });

    test('open without an error or a request to any network', () => {
      expect(findings(visits, 'loading')).toEqual([]);
    });

    test('show all their words, none cut off or out of its box', () => {
      expect(findings(visits, 'layout')).toEqual([]);
    });

    wellSet(perFile);

    test('have a page beside the saw that can be sent to a phone: 500 kB at most', () => {
      const large = site.jobs.filter(
        ({ slug }) => statSync(join(site.output, slug, 'saw.html')).size > 500_000,
      );
      expect(large.map(({ slug }) => slug)).toEqual([]);
    });

    const pagesOf = (sheet: string) => {
      const questions = words.languages.map((lang) => words.say(lang)(`sheet.${sheet}.question`));
      return files.map(
        ({ pages }) => pages.filter(({ text }) => questions.includes(text.split('\n')[0] ?? '')).length,
      );
    };

    test('have the care of the floor on one page', () => {
      expect(pagesOf('care-sheet')).toEqual(slugs.map(() => 1));
    });

    test('have a choice of layouts on one page, so that nobody signs a page of its own', () => {
      const choices = slugs.map((slug) => {
        const { surfaces } = site.jobs.find((job) => job.slug === slug)!.packet;
        return surfaces.filter(({ choice }) => choice !== undefined).length;
      });
      expect(pagesOf('choice-sheet')).toEqual(choices);
    });

    test('are printed at true scale, check bars to 0.2 mm', () => {
      const wrong = perFile((file) => {
        const inches = site.jobs.find(({ slug }) => slug === slugs[files.indexOf(file)])?.packet.spec.print
          .system;
        const nominal = inches === 'inches' ? 101.6 : 100;
        const bars = file.pages.flatMap((page) => checkBars(page, nominal));
        const off = bars.flat().filter((length) => Math.abs(length - nominal) > 0.2);
        return bars.length === 0 ? ['no check bar'] : off.map((length) => `${length} mm`);
      });
      expect(wrong).toEqual([]);
    });
  });
}
