import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildSite } from '../../src/site/buildSite.ts';
import { patience } from '../pages/support/browserPath.ts';
import { demoSite } from '../pages/support/demoSite.ts';
import { momentFigures } from '../pages/support/printedFigures.ts';
import { newPlace } from '../site/fixture.ts';
import { readPdf } from '../site/pdf.ts';
import { demos, demoTexts, inLanguage } from './demos.ts';

const slugs = Object.keys(demoTexts);
const quiet = { names: [], progress: () => undefined };
const build = async (jobs: Record<string, string>) => {
  const { root, places } = newPlace(jobs);
  const { problems } = await buildSite(places, quiet);
  expect(problems).toEqual([]);
  return (slug: string) => join(root, 'output', slug);
};

/** What a reader sees of a page: its text without tags, entities as they read. */
function textOf(html: string): string {
  const body = html.slice(html.indexOf('<body'));
  return body
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');
}

describe.each(['en', 'es'])('the sheets of the demo jobs, all in %s', (lang) => {
  const pages = new Map<string, Record<string, string>>();
  beforeAll(async () => {
    const folder = await build(
      Object.fromEntries(slugs.map((slug) => [slug, inLanguage(demoTexts[slug]!, lang)])),
    );
    for (const slug of slugs) {
      const names = readdirSync(folder(slug)).filter((name) => name.endsWith('.html'));
      pages.set(
        slug,
        Object.fromEntries(names.map((name) => [name, readFileSync(join(folder(slug), name), 'utf8')])),
      );
    }
  }, 60_000);

  test.each(slugs)('%s has no word that stands for a missing one', (slug) => {
    for (const [name, html] of Object.entries(pages.get(slug)!)) {
      expect(textOf(html), name).not.toMatch(/undefined|NaN|\[object|Infinity|\bnull\b|sheet\.\w+\.|\{\w+\}/);
    }
  });

  test.each(slugs)('%s calls no edge by its id', (slug) => {
    const { packet } = demos.find((demo) => demo.slug === slug)!;
    const ids = packet.surfaces
      .flatMap(({ edges }) => edges.map(({ id }) => id))
      .filter((id) => /[:.]/.test(id));
    for (const [name, html] of Object.entries(pages.get(slug)!)) {
      expect(
        ids.filter((id) => textOf(html).includes(id)),
        name,
      ).toEqual([]);
    }
  });

  test.each(slugs)('%s prints one box a cut piece on its cards and saw list', (slug) => {
    const { packet } = demos.find((demo) => demo.slug === slug)!;
    const boxes = ['hard-cuts.html', 'saw-list.html'].map(
      (name) => pages.get(slug)![name]?.match(/class="box"/g)?.length ?? 0,
    );
    const cut = packet.surfaces.flatMap((surface) => surface.pieces.filter(({ whole }) => !whole)).length;
    expect(boxes.reduce((sum, count) => sum + count, 0)).toBe(cut);
  });

  test.each(slugs)('%s gives each time of the calendar', (slug) => {
    const { packet } = demos.find((demo) => demo.slug === slug)!;
    const rows = pages.get(slug)!['calendar.html']!.split('<tr>').slice(2).map(textOf0);
    expect(rows).toHaveLength(packet.calendar.length);
    for (const [i, { from }] of packet.calendar.entries()) {
      const [, clock] = momentFigures(from, lang, packet.spec.print.paper);
      expect(rows[i]!.replaceAll('. m', '.m')).toContain(clock);
      expect(rows[i]).toMatch(new RegExp(`\\b${Number(from.slice(8, 10))}\\b`));
    }
  });

  test.each(slugs)('%s names the columns of every list of chalk lines', (slug) => {
    const tables = pages.get(slug)!['set-out.html']!.split('<table').slice(1);
    expect(tables.length).toBeGreaterThan(0);
    expect(tables.filter((table) => !table.includes('<thead>'))).toEqual([]);
  });

  test.each(slugs)('%s shows no money outside the office', (slug) => {
    const { packet } = demos.find((demo) => demo.slug === slug)!;
    const prices = Object.values(packet.tiles).flatMap(({ price }) =>
      price === undefined ? [] : [price.toFixed(2)],
    );
    for (const [name, html] of Object.entries(pages.get(slug)!)) {
      if (name === 'material-tally-priced.html') continue;
      const amounts = textOf(html).match(/\d+[.,]\d\d\b/g) ?? [];
      expect(
        amounts.filter((amount) => prices.includes(amount.replace(',', '.'))),
        name,
      ).toEqual([]);
    }
  });
});

function textOf0(html: string): string {
  return textOf(`<body>${html}`);
}

describe('the printed boot room', () => {
  test(
    'is at most eight pages for the crew beside the base, which is one, and four for the owner beside the choice, each zone one page',
    async () => {
      const { output } = await demoSite();
      const printed = async (name: string) => (await readPdf(join(output, 'fernlea-boot-room', name))).pages;
      const crew = await printed('crew.pdf');
      const base = crew.filter(({ text }) => text.includes('Found on the base'));
      expect(base).toHaveLength(1);
      expect(crew.length - base.length).toBeLessThanOrEqual(8);
      expect(crew.filter(({ text }) => text.includes('Zone 1') && text.includes('Walk from'))).toHaveLength(
        1,
      );
      const owner = await printed('owner.pdf');
      const choice = owner.filter(({ text }) => text.includes('I want layout 2'));
      expect(choice.length).toBeLessThanOrEqual(1);
      expect(owner.length - choice.length).toBeLessThanOrEqual(4);
    },
    patience,
  );
});
