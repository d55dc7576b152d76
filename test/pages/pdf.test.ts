import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { readWords } from '../../src/site/words.ts';
import { home, patience } from './support/browserPath.ts';
import { type BuiltJob, demoJobs } from './support/buildJobs.ts';
import { demoSite } from './support/demoSite.ts';
import type { PrintedFile, PrintedPage } from './support/PrintedPage.ts';
import { checkBars } from './support/pageFaults.ts';
import { readPrinted } from './support/readPrinted.ts';
import { fenceFigures, holdsFigure } from './support/sawFigures.ts';
import { tapedSizes, tapedTemplates } from './support/tapedTemplates.ts';
import { wellSet } from './support/wellSet.ts';

const words = readWords(join(home, 'layouts', 'words'));
const documents = ['crew', 'templates', 'owner', 'office', 'packet'] as const;
const slugs = Object.keys(demoJobs());

/** The first line of a page: the question that its sheet answers. */
const questionOf = ({ text }: PrintedPage): string => text.split('\n')[0] ?? '';

/** The pages of a file that show templates; labels are bound with them. */
function templatesOf(file: PrintedFile): PrintedFile {
  const questions = words.languages.map((lang) => words.say(lang)('sheet.templates.question'));
  return { ...file, pages: file.pages.filter((page) => questions.includes(questionOf(page))) };
}

interface Printed {
  readonly job: BuiltJob;
  readonly files: Readonly<Record<string, PrintedFile>>;
}

describe.each(slugs)('the PDFs of %s', (slug) => {
  let { job, files } = {} as Printed;

  beforeAll(async () => {
    const site = await demoSite();
    job = site.jobs.find((one) => one.slug === slug)!;
    const read = async (name: string) =>
      [name, await readPrinted(join(site.output, slug, `${name}.pdf`))] as const;
    files = Object.fromEntries(await Promise.all(documents.map(read)));
  }, patience);

  const perFile = (find: (file: PrintedFile) => readonly string[]) =>
    documents.flatMap((name) => find(files[name]!).map((line) => `${name}.pdf ${line}`));
  const perPage = (find: (page: PrintedPage, file: PrintedFile) => readonly string[]) =>
    perFile((file) =>
      file.pages.flatMap((page) => find(page, file).map((line) => `page ${page.number}: ${line}`)),
    );

  // ISO 32000-1: 14.3.3 title, 14.9.2 language, 14.7 structure, 12.3.3 outline.
  test('have a title, a language, tags and an outline', () => {
    for (const name of documents) {
      const { info, outline, tagged } = files[name]!;
      expect(info.Title).toContain(job.packet.job.title);
      expect(words.languages).toContain(info.Language);
      expect(tagged).toBe(true);
      expect(outline.length).toBeGreaterThan(0);
    }
  });

  test('bear job, revision, stamp and "n of m" on every page', () => {
    const { title, revision, stamp } = job.packet.job;
    const says = [...new Set([...job.packet.spec.print.crew, job.packet.spec.print.owner])].map(words.say);
    const missing = perPage(({ text, number }, { pages }) => {
      const numbered = says.map((say) => `${say('site.page')} ${number} ${say('site.of')} ${pages.length}`);
      const lacks = [title, stamp].filter((part) => !text.includes(part));
      const revised = says.some((say) => text.includes(`${say('site.revision')} ${revision}`));
      return [
        ...lacks,
        ...(revised ? [] : ['revision']),
        ...(numbered.some((line) => text.includes(line)) ? [] : numbered),
      ];
    });
    expect(missing).toEqual([]);
  });

  wellSet(perFile);

  // Both bars of a page are one path, so its width and its height are their lengths.
  test('are printed at true scale: check bars of 4 in or 100 mm in both directions, to 0.2 mm', () => {
    const nominal = job.packet.spec.print.system === 'inches' ? 101.6 : 100;
    // A line of a template may be as long as a bar by chance: below.
    const reduced = documents.filter((name) => name !== 'templates');
    const bars = reduced.flatMap((name) => files[name]!.pages.flatMap((page) => checkBars(page, nominal)));
    expect(bars.length).toBeGreaterThan(3);
    const off = bars.flat().filter((length) => Math.abs(length - nominal) > 0.2);
    expect(off).toEqual([]);
  });

  // A sheet that runs on has its drawing, and the bars with it, on one of its pages.
  test('have check bars on every sheet whose foot speaks of them', () => {
    const nominal = job.packet.spec.print.system === 'inches' ? 101.6 : 100;
    const notes = words.languages.map((lang) =>
      words.say(lang)('site.printNote', { units: 'mm', half: '0.5' }).slice(0, 30),
    );
    const without = perFile(({ pages }) => {
      const speaking = pages.filter(({ text }) => notes.some((note) => text.includes(note)));
      const barred = pages.filter((page) => checkBars(page, nominal).length > 0).map(questionOf);
      return [...new Set(speaking.map(questionOf))].filter((question) => !barred.includes(question));
    });
    expect(without).toEqual([]);
  });

  test('carry both bars at true scale on every page of templates, to 0.2 mm', () => {
    const nominal = job.packet.spec.print.system === 'inches' ? 101.6 : 100;
    const without = templatesOf(files.templates!).pages.filter(
      (page) =>
        !checkBars(page, nominal).some((bar) => bar.every((length) => Math.abs(length - nominal) <= 0.2)),
    );
    expect(without.map(({ number }) => number)).toEqual([]);
  });

  // Taped together letter on letter, as a setter does; a part that is broken off has no size of the whole piece.
  test('show templates as large as their pieces, to 0.2 mm', () => {
    const broken = new RegExp(
      words.languages.map((lang) => words.say(lang)('sheet.templates.broken').slice(0, 8)).join('|'),
    );
    const taped = tapedTemplates(templatesOf(files.templates!));
    const whole = taped.filter(({ sheets }) => !broken.test(sheets[0]!.page.text));
    const off = whole.filter((one) => {
      const { outer } = job.packet.surfaces[0]!.cuts.find(({ number }) => number === one.cut)!.shape;
      const [wide, high] = [0, 1].map((axis) => {
        const along = outer.map((point) => point[axis]! / job.packet.ticksPerMm);
        return Math.max(...along) - Math.min(...along);
      }) as [number, number];
      const near = (a: number, b: number) => Math.abs(a - b) <= 0.2;
      return !tapedSizes(one).some(
        ([w, h]) => (near(w, wide) && near(h, high)) || (near(w, high) && near(h, wide)),
      );
    });
    expect(taped.length).toBeGreaterThan(3);
    expect(off.map(({ cut }) => cut)).toEqual([]);
  });

  test('give back every saw size as figures: whole number, space, numerator, slash, denominator', () => {
    const say = words.say(job.packet.spec.print.crew[0]!);
    const pages = files.crew!.pages.filter(({ text }) =>
      text.includes(say('sheet.saw-list.title', { byTile: 'no' })),
    );
    const text = pages.map((page) => page.text).join('\n');
    const cuts = job.packet.surfaces.flatMap((surface) => surface.cuts).filter((cut) => !isHard(cut));
    const lost = cuts.flatMap((cut) =>
      fenceFigures(cut, job.packet)
        .filter((figure) => !holdsFigure(text, figure))
        .map((figure) => `cut ${cut.number}: ${figure}`),
    );
    expect(cuts.length).toBeGreaterThan(5);
    expect(lost).toEqual([]);
  });
});
