import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { PATTERN_KEYS } from '../../src/job/sections/patternKeys.ts';
import { makePattern } from '../../src/pattern/index.ts';
import { galleryPatterns } from '../../src/sheets/gallery/galleryPatterns.ts';
import { makeGallery } from '../../src/sheets/gallery/makeGallery.ts';
import { readWords } from '../../src/site/words.ts';

const words = readWords(join(import.meta.dirname, '../../layouts/words'));
const patterns = galleryPatterns(8 * 8128, 1016);

describe('the gallery of patterns', () => {
  test('shows every pattern that the job file knows', () => {
    const shown = new Set(patterns.map(({ spec }) => spec.name));
    const known = ['straight', 'running', 'own', ...PATTERN_KEYS.map(({ name }) => name)];
    expect(known.filter((name) => !shown.has(name as never))).toEqual([]);
  });

  test.each(patterns.map((one) => [one.name, one] as const))(
    'shows %s with tiles that close',
    (_, { spec, tiles }) => {
      expect(makePattern(spec, tiles, 1016).closing).toBeUndefined();
    },
  );

  test.each(patterns.map((one) => [one.name, one] as const))(
    'tells how %s is written in the job file',
    (_, { written, spec, tiles }) => {
      const sizes = tiles.map(({ key, shape }) => `${key}: {${SHAPES[shape?.kind ?? 'rectangle']!(key)}}`);
      const text = `title: Case\nrevision: {letter: A, date: 2027-03-01}\ntile: {${sizes.join(', ')}}\njoint: 1/8 in\nfloor:\n  walls: {A-B: 8 ft, B-C: 5 ft, C-D: 8 ft, D-A: 5 ft}\n  pattern: ${written}\n`;
      const { job, problems } = readJob(text, 'job.yaml', 'case');
      expect(problems).toEqual([]);
      expect(job!.surfaces[0]!.pattern).toMatchObject(spec);
    },
  );

  // Geometry: on a unit of 8 in a repeat has 18 × 64 sq in, 12.5 of them lie on 100 sq ft.
  test('counts tiles on 100 sq ft and shares them out by number and by area', () => {
    const four = makeGallery(words.say('en'), { system: 'inches' }).find(({ id }) => id === 'fourSizes')!;
    expect(four.tiles.map(({ count, ofTiles, ofFloor }) => [count, ofTiles, ofFloor])).toEqual([
      ['12.5', '16.7 %', '33.3 %'],
      ['25', '33.3 %', '44.4 %'],
      ['12.5', '16.7 %', '11.1 %'],
      ['25', '33.3 %', '11.1 %'],
    ]);
  });

  test.each(words.languages)('has all its words in "%s"', (lang) => {
    for (const { title, closes, joints, tiles } of makeGallery(words.say(lang), { system: 'mm' }))
      for (const text of [title, closes, joints, ...tiles.map(({ name }) => name)])
        expect(text).not.toMatch(/gallery\.|\{|undefined/);
  });
});

const SHAPES: Readonly<Record<string, (key: string) => string>> = {
  rectangle: () => 'read: 7 7/8 in x 7 7/8 in',
  hexagon: () => 'hexagon: {flats: 8 in}',
  octagon: () => 'octagon: {flats: 8 in}',
  rhombus: () => 'rhombus: 12 in x 8 in',
  chevron: (key) => `chevron: {read: 12 in x 3 in, hand: ${key}}`,
  round: () => 'round: 4 in',
};
