import { describe, expect, test } from 'vitest';
import { demos, demoTexts, sheetsOf } from './demos.ts';

interface Tally {
  readonly tiles: readonly { readonly name: string; readonly boxes: number; readonly price?: string }[];
  readonly materials: readonly { readonly what: string; readonly name: string }[];
  readonly total?: { readonly sum: string; readonly label: string; readonly unpriced: string };
}

const talliesOf = ({ sheets }: Pick<(typeof demos)[number], 'sheets'>) =>
  sheets.filter(({ template }) => template === 'material-tally').map(({ data }) => data as unknown as Tally);

/** Prices of a box, by tile, as the job file has them. */
const boxPrices = (text: string) =>
  [...text.matchAll(/box: \{[^}]*price: ([\d.]+)/g)].map(([, one]) => Number(one));

describe('the office has what the priced lines come to', () => {
  test.each(demos.map((demo) => [demo.slug, demo] as const))('%s', (slug, demo) => {
    const prices = boxPrices(demoTexts[slug]!);
    const [plain, priced] = talliesOf(demo);
    expect(plain!.total).toBeUndefined();
    expect(priced !== undefined).toBe(prices.length > 0);
    if (!priced) return;
    const cents = priced.tiles.reduce((sum, { boxes }, i) => sum + boxes * Math.round(prices[i]! * 100), 0);
    expect(Number(priced.total!.sum.replace(',', '.'))).toBe(cents / 100);
    for (const { what, name } of priced.materials) {
      expect(priced.total!.unpriced).toContain(what);
      expect(priced.total!.unpriced).toContain(name);
    }
  });

  test('a tile without a price is named among what has none', () => {
    const text = demoTexts['linden-entry']!.replace('price: 38.00, ', '');
    const [, priced] = talliesOf(sheetsOf('unpriced', text, ['material-tally']));
    expect(priced!.total!.unpriced).toMatch(/^Not priced here: Dark ash strip, /);
    expect(priced!.total!.label).toMatch(/^All that is priced/);
  });
});
