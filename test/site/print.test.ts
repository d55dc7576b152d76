import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildSite } from '../../src/site/buildSite.ts';
import { findBrowser } from '../../src/site/setup/findBrowser.mjs';
import { fixtureCore, newPlace, writeJobs } from './fixture.ts';
import { readPdf } from './pdf.ts';

const browser = findBrowser(process.env, join(import.meta.dirname, '../../.cache/browser'));
const wish = {
  names: [],
  core: fixtureCore,
  sheetFolder: 'test/site/sheets',
  progress: () => undefined,
  browser,
};

async function printed() {
  const place = newPlace({ boot: 'title: Boot room & WC\nstatus: planned' });
  const { problems } = await buildSite(place.places, wish);
  expect(problems).toEqual([]);
  return { ...place, pdf: (name: string) => join(place.root, 'output', 'boot', `${name}.pdf`) };
}

describe('a printed packet', () => {
  let first: Awaited<ReturnType<typeof printed>>;
  beforeAll(async () => {
    first = await printed();
  });

  test('mixes papers and directions, sizes as ISO 216 and ANSI Y14.1 give them', async () => {
    const { pdf } = first;
    const { pages } = await readPdf(pdf('packet'));
    const sizes = pages.map(({ width, height }) => `${Math.round(width)}x${Math.round(height)}`);
    expect(new Set(sizes)).toEqual(new Set(['792x612', '595x842']));
  });

  test('says on every page what it is, which job and revision, and n of m', async () => {
    const { pdf } = first;
    const { pages } = await readPdf(pdf('crew'));
    expect(pages.length).toBeGreaterThan(1);
    for (const [index, { text }] of pages.entries()) {
      for (const part of [
        'Plain "sheet"',
        'Is it <all> here?',
        'Boot room & WC',
        'Revision A',
        'a1b2c3',
        'Scale 1:16',
      ]) {
        expect(text).toContain(part);
      }
      expect(text).toContain(`Page ${index + 1} of ${pages.length}`);
    }
  });

  test('keeps its scale where something is wider than the paper: letters are as large as the styles say', async () => {
    const { pdf } = first;
    const { pages } = await readPdf(pdf('packet'));
    // Title 16 pt, question and job 10 pt, foot 8 pt.
    for (const { sizes } of pages) expect(sizes).toEqual(expect.arrayContaining([16, 10, 8]));
  });

  test('uses no font but the one that comes with it', async () => {
    const { pdf } = first;
    const fonts = readFileSync(pdf('packet'), 'latin1').match(/\/BaseFont \/[^\s/]+/g) ?? [];
    expect(fonts.length).toBeGreaterThan(0);
    expect(fonts.filter((font) => !font.includes('AtkinsonHyperlegible'))).toEqual([]);
  });

  test('has a title, a language, tags and an outline', async () => {
    const { pdf } = first;
    const { info, outline } = await readPdf(pdf('packet'));
    expect(info).toMatchObject({ Title: 'Boot room & WC · Whole packet', Language: 'en' });
    expect(outline).toEqual(['Plain "sheet"', 'Notes']);
    expect(readFileSync(pdf('packet'), 'latin1')).toMatch(/\/Marked true/);
  });

  test('is the same to the byte when it is printed again', async () => {
    const again = await printed();
    expect(readFileSync(first.pdf('packet')).equals(readFileSync(again.pdf('packet')))).toBe(true);
  });

  test('says on its pages when the job file has changed since', async () => {
    const { root, places, pdf } = await printed();
    writeJobs(root, { boot: 'bad' });
    await buildSite(places, wish);
    const { pages } = await readPdf(pdf('crew'));
    for (const { text } of pages) expect(text).toContain('has changed since');
  });

  test('is printed once when two jobs hold the same page', async () => {
    const same = 'title: Boot room\nstatus: planned';
    const place = newPlace({ boot: same, hall: same });
    const told: string[] = [];
    const { problems } = await buildSite(place.places, { ...wish, progress: (line) => void told.push(line) });
    expect(problems).toEqual([]);
    expect(told.filter((line) => line.startsWith('Printed')).sort()).toEqual([
      'Printed boot/crew.pdf',
      'Printed boot/owner.pdf',
      'Printed boot/packet.pdf',
    ]);
    const [one, other] = ['boot', 'hall'].map((slug) =>
      readFileSync(join(place.root, 'output', slug, 'packet.pdf')),
    );
    expect(one!.equals(other!)).toBe(true);
  });

  test('comes through a crash of the browser', async () => {
    const place = newPlace({ boot: 'title: Boot\nstatus: planned' });
    const fragile = join(place.root, 'fragile-headless-shell');
    const mark = join(place.root, 'crashed');
    writeFileSync(
      fragile,
      `#!/bin/sh\n[ -e ${mark} ] || { touch ${mark}; exit 1; }\nexec "${browser}" "$@"\n`,
    );
    chmodSync(fragile, 0o755);
    const { problems } = await buildSite(place.places, { ...wish, browser: fragile });
    expect(problems).toEqual([]);
  });
});
