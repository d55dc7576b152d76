import { describe, expect, test } from 'vitest';
import { demoTexts, inLanguage, sheetsOf } from './demos.ts';

const KINDS = ['set-out', 'layout-plan', 'choice-sheet', 'record'];

/** All words that stand on the drawings of a demo in a language. */
function drawnIn(slug: string, lang: string): readonly string[] {
  const { sheets } = sheetsOf(slug, inLanguage(demoTexts[slug]!, lang), KINDS);
  return [...JSON.stringify(sheets).matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, words]) => words!);
}

describe('a drawing calls what stands in a room as the words of its sheet do', () => {
  test.each([
    ['rowan-bath', 'es', ['brida', 'bañera (tub)', 'inodoro'], ['flange', 'tub', 'vanity cabinet']],
    ['rowan-bath', 'en', ['flange', 'tub', 'toilet'], []],
    ['quarry-kitchen', 'es', ['isla (island)'], ['island']],
  ])('on %s in %s', (slug, lang, said, unsaid) => {
    const drawn = drawnIn(slug, lang);
    for (const name of said) expect(drawn).toContain(name);
    for (const name of unsaid) expect(drawn).not.toContain(name);
  });
});
