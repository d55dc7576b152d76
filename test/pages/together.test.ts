import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { printPdf } from '../../src/site/printPdf.ts';
import { readWords } from '../../src/site/words.ts';
import { writeFile } from '../../src/site/writeFile.ts';
import { browserPath, home, patience } from './support/browserPath.ts';
import { type BuiltJob, buildJobs, demoJobs } from './support/buildJobs.ts';
import type { PrintedPage } from './support/PrintedPage.ts';
import { readPrinted } from './support/readPrinted.ts';

const slug = 'quarry-kitchen';
const say = readWords(join(home, 'layouts', 'words')).say('es');
const text = demoJobs()[slug]!.replace(
  /^print: .*$/m,
  'print: {paper: a4, units: mm, saw step: 1 mm, crew: es, owner: es}',
);

describe('what belongs together on a kitchen printed on A4 in Spanish', () => {
  let job: BuiltJob;
  let pages: readonly PrintedPage[] = [];
  const pagesOf = (title: string) => pages.filter((page) => page.text.includes(title));

  beforeAll(async () => {
    const site = await buildJobs({ [slug]: text });
    job = site.jobs[0]!;
    const browser = await openBrowser(browserPath());
    const pdf = join(site.output, slug, 'packet.pdf');
    writeFile(pdf, await printPdf(await browser.newPage(), join(site.output, slug, 'print', 'packet.html')));
    await browser.close();
    ({ pages } = await readPrinted(pdf));
  }, patience);

  test('the cuts of one fence setting in a zone stand on one page', () => {
    const list = pagesOf(say('sheet.saw-list.title', { byTile: 'no' })).filter(
      (page) => !page.text.includes(say('sheet.saw-list.title', { byTile: 'yes' })),
    );
    const [{ cuts, zones }] = job.packet.surfaces as [(typeof job.packet.surfaces)[number]];
    const straight = cuts.filter((cut) => !isHard(cut) && cut.fences.length > 0);
    const settings = [...new Set(straight.map(({ fences }) => fences[0]!.saw))];
    const together = zones.flatMap((zone) =>
      settings.map((saw) =>
        straight
          .filter(({ fences }) => fences[0]!.saw === saw)
          .flatMap(({ pieces }) => pieces.filter((piece) => zone.pieces.includes(piece))),
      ),
    );
    const torn = together.filter(
      (names) => !list.some((page) => names.every((name) => page.text.includes(name))),
    );
    expect(list.length).toBeGreaterThan(1);
    expect(torn).toEqual([]);
  });

  test('no row of found spaces stands on a page without the heads of its columns', () => {
    const zone = pagesOf(say('sheet.zone.title', { zone: 1 }));
    const bare = zone.filter((page) => /[KLMN]{1,2}\d+[ab]? … /.test(page.text)).map((page) => page.text);
    expect(bare.length).toBeGreaterThan(0);
    for (const page of bare) expect(page).toContain(say('sheet.zone.foundSpace'));
  });
});
