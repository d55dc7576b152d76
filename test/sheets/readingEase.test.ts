import { flesch } from 'flesch';
import { syllable } from 'syllable';
import { expect, test } from 'vitest';
import { careSheet } from '../../src/sheets/careSheet.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { demos, words } from './demos.ts';

interface CareData {
  readonly dos: readonly { readonly text: string }[];
  readonly donts: readonly { readonly text: string }[];
  readonly cautions: readonly { readonly text: string }[];
}

const slugs = demos.map(({ slug }) => slug);

/** What an owner reads in whole sentences: what to do, what to leave, and the cautions. */
function sentencesFor(slug: string, lang: string): readonly string[] {
  const { packet } = demos.find((demo) => demo.slug === slug)!;
  const [page] = careSheet.make(sheetContext(packet, { lang, say: words.say(lang) }));
  const { dos, donts, cautions } = page!.data as CareData;
  const lines = [...dos, ...donts, ...cautions].map(({ text }) => text);
  return lines
    .flatMap((line) => line.split(/[.:;!?]+(?:\s|$)/))
    .filter((sentence) => /\p{L}/u.test(sentence));
}

const wordsOf = (sentence: string): readonly string[] => sentence.match(/[\p{L}\p{N}'-]+/gu) ?? [];

// Flesch, "A New Readability Yardstick", Journal of Applied Psychology 32 (1948): 60 to 70 is standard, 70 to 80 fairly easy.
test.each(slugs)('the care sheet of %s is easier to read than a newspaper: Flesch 70 or more', (slug) => {
  const sentences = sentencesFor(slug, 'en');
  const all = sentences.flatMap(wordsOf);
  const ease = flesch({
    sentence: sentences.length,
    word: all.length,
    syllable: all.reduce((sum, word) => sum + syllable(word), 0),
  });
  expect(all.length).toBeGreaterThan(60);
  expect(ease).toBeGreaterThanOrEqual(70);
});

// No library counts Spanish syllables well enough; short sentences are what can be held.
test.each(words.languages.flatMap((lang) => slugs.map((slug) => ({ lang, slug }))))(
  'the care sheet of $slug in $lang has sentences of twelve words on average, and none over thirty',
  ({ slug, lang }) => {
    const lengths = sentencesFor(slug, lang).map((sentence) => wordsOf(sentence).length);
    expect(lengths.reduce((sum, length) => sum + length, 0) / lengths.length).toBeLessThanOrEqual(12);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(30);
  },
);
