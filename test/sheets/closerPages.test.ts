import { describe, expect, test } from 'vitest';
import { textsIn } from '../drawing/readSvg.ts';
import { demos, demoTexts, sheetsOf } from './demos.ts';

interface ZoneData {
  readonly plan: string;
  readonly closer: number;
  readonly unnamed: readonly { readonly pieces: readonly string[] }[];
}

const dataOf = ({ data }: { readonly data: unknown }) => data as ZoneData;
const listed = (data: ZoneData) => data.unnamed.flatMap(({ pieces }) => pieces);
const namesOn = (data: ZoneData) => textsIn(data.plan).map(({ words }) => words);
const ratioOf = ({ scale }: { readonly scale?: string }) => Number(scale!.split(':')[1]);

const zones = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.flatMap((surface) =>
    surface.zones.map((zone) => ({
      slug,
      zone,
      cuts: surface.pieces.filter(({ id, cut }) => cut !== null && zone.pieces.includes(id)).length,
      own: sheets.find(({ name }) => name === `zone-${zone.number}`)!,
      closer: sheets.filter(
        ({ name, template }) => template === 'zone-names' && name.startsWith(`zone-${zone.number}-`),
      ),
    })),
  ),
);
const close = zones.filter(({ closer }) => closer.length > 0);

describe('the plan of a zone', () => {
  test.each(zones)(
    'or its close up has no room for at most a third of the cuts, or a dozen, which a short list tells: $slug $zone.number',
    (one) => {
      const pages = one.closer.length > 0 ? one.closer : [one.own];
      expect(pages.flatMap((page) => listed(dataOf(page))).length).toBeLessThanOrEqual(
        Math.max(12, one.cuts / 3),
      );
    },
  );

  test('says how many pages have the close up, and they follow it', () => {
    for (const { own, closer } of zones) expect(dataOf(own).closer).toBe(closer.length);
    for (const { sheets } of demos)
      sheets.forEach(({ template }, i) => {
        if (template === 'zone-names') expect(sheets[i - 1]!.template).toMatch(/^zone/);
      });
  });

  test('has no close up where it names enough, as in the bathroom', () => {
    expect(zones.find(({ slug }) => slug === 'rowan-bath')!.closer).toEqual([]);
  });
});

describe('the close up of a zone', () => {
  test('is asked for by a crowded floor', () => {
    const slugs = new Set(close.map(({ slug }) => slug));
    expect([...slugs]).toEqual(expect.arrayContaining(['linden-entry', 'quarry-kitchen', 'sedge-washroom']));
  });

  test.each(close)(
    'names every piece on one of its pages, or lists it there: $slug $zone.number',
    ({ zone, closer }) => {
      const told = closer.flatMap((page) => [...namesOn(dataOf(page)), ...listed(dataOf(page))]);
      expect(zone.pieces.filter((id) => !told.includes(id))).toEqual([]);
      const named = closer.flatMap((page) => namesOn(dataOf(page)));
      expect(zone.pieces.filter((id) => named.indexOf(id) !== named.lastIndexOf(id))).toEqual([]);
    },
  );

  test.each(close)(
    'has the names of the first piece, and of the one where work begins beyond it, on its drawing: $slug $zone.number',
    ({ zone, own, closer }) => {
      const wanted = [zone.first, ...(zone.beyond === undefined ? [] : [zone.beyond])];
      for (const id of wanted) {
        expect(namesOn(dataOf(own))).toContain(id);
        expect(closer.flatMap((page) => namesOn(dataOf(page)))).toContain(id);
      }
      expect(closer.flatMap((page) => listed(dataOf(page)))).not.toContain(zone.first);
    },
  );

  test.each(close)('is drawn larger than the plan on its own page: $slug $zone.number', ({ own, closer }) => {
    for (const page of closer) expect(ratioOf(page)).toBeLessThan(ratioOf(own));
  });

  test.each(
    ['letter', 'a4'].flatMap((paper) =>
      ['linden-entry', 'quarry-kitchen', 'sedge-washroom'].map((slug) => ({ slug, paper })),
    ),
  )('has no page that names next to nothing: $slug on $paper', ({ slug, paper }) => {
    const { packet, sheets } = sheetsOf(slug, demoTexts[slug]!.replace(/paper: \w+/, `paper: ${paper}`), [
      'zone',
    ]);
    const ids = new Set(packet.surfaces.flatMap(({ pieces }) => pieces.map(({ id }) => id)));
    const named = sheets
      .filter(({ template }) => template === 'zone-names')
      .map((page) => namesOn(dataOf(page)).filter((words) => ids.has(words)).length);
    expect(named.length).toBeGreaterThan(0);
    // A sixth of what the fullest page of the job names is what an eye calls a page that is not empty: common practice, no source.
    expect(Math.min(...named)).toBeGreaterThanOrEqual(Math.max(...named) / 6);
  });
});
