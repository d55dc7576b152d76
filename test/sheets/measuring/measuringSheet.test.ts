import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src/job/readJob.ts';
import { makePacket } from '../../../src/packet/makePacket.ts';
import { askedFields } from '../../../src/sheets/measuring/askedFields.ts';
import { measuringSheet } from '../../../src/sheets/measuring/measuringSheet.ts';
import type { SheetPage } from '../../../src/sheets/Sheet.ts';
import { sheetContext } from '../../../src/sheets/SheetContext.ts';
import { readWords } from '../../../src/site/words.ts';

const home = join(import.meta.dirname, '../../..');
const words = readWords(join(home, 'layouts/words'));
const bathroom = readFileSync(join(home, 'jobs/rowan-bath/job.yaml'), 'utf8');

function pagesOf(text: string, lang = 'en'): readonly SheetPage[] {
  const { job, problems } = readJob(text, 'job.yaml', 'bath');
  if (!job) throw new Error(JSON.stringify(problems));
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return measuringSheet.make(sheetContext(made.packet, { lang, say: words.say(lang) }));
}

/** All words of a page's data, drawings left out. */
function wordsOf(data: unknown): readonly string[] {
  if (typeof data === 'string') return data.startsWith('<svg') ? [] : [data];
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(wordsOf) : [];
}

const filled = (text: string, lang?: string) => {
  const page = pagesOf(text, lang).find(({ figures }) => figures?.shape === 'filled')!;
  return wordsOf(page.data).join('\n');
};

describe('the blank sheets', () => {
  const blank = pagesOf(bathroom).filter(({ figures }) => figures?.shape !== 'filled');
  const said = blank.flatMap(({ data }) => wordsOf(data)).join('\n');

  test.each(askedFields.map((field) => [field.path.join(' › '), field.words] as const))(
    'ask %s',
    (_, key) => {
      expect(said).toContain(words.say('en')(key));
    },
  );

  test('are a document of their own', () => {
    expect(blank.map(({ bundles }) => bundles)).toEqual(blank.map(() => ['measuring']));
  });

  test('hold rectangle, L, T and any room of up to twelve corners', () => {
    expect(blank.map(({ suffix }) => suffix)).toEqual([
      'rectangle',
      'l',
      't',
      'any',
      'corners',
      'doorways',
      'obstacles',
      'base',
      'house',
    ]);
    const any = blank.find(({ suffix }) => suffix === 'any')!;
    expect(wordsOf(any.data).filter((word) => /^[A-L]-[A-L]$/.test(word))).toHaveLength(12);
  });
});

describe('the filled sheet', () => {
  test('names the reading that is an inch out, and which of its two', () => {
    expect(filled(bathroom)).toContain('Read again: B-D, reading 2. It looks an inch too long (1 1/16 in).');
    expect(filled(bathroom, 'es')).toContain('Lea otra vez: B-D, lectura 2. Parece una pulgada de más');
  });

  test('suspects nothing once that is read again', () => {
    const right = filled(bathroom.replace('10 ft 3 7/16 in]', '10 ft 2 7/16 in]'));
    expect(right).not.toContain('Read again');
    expect(right).toContain('Together they fit as they should.');
  });

  test('tells which readings to take again where it cannot tell which is wrong', () => {
    const once = bathroom
      .replace(/\[(\d+ ft [^,\]]*), [^\]]*\]/g, '$1')
      .replace(/ {2}corner checks:.*\n/, '')
      .replace('B-D: 10 ft 2 3/8 in', 'B-D: 10 ft 3 7/8 in');
    expect(filled(once)).toMatch(/Read these again: .+ or .+\. One of them is out by about/);
  });

  test('says so where nothing can be checked', () => {
    const walls = bathroom
      .replace(/ {2}diagonals:.*\n/, '')
      .replace(/ {2}corner checks:.*\n/, '')
      .replace(/\[(\d+ ft [^,\]]*), [^\]]*\]/g, '$1');
    expect(filled(walls)).toContain('No check possible: measure one diagonal');
  });

  test('tells what was found on site, and where a wall stands in the room', () => {
    const bowed = bathroom.replace('5 ft 0 9/16 in]}', '5 ft 0 9/16 in], middle: 1/8 in in}');
    expect(filled(bowed)).toContain('Middle of D-A: 1/8 in into the room.');
    expect(filled(bowed)).toContain('Water: kitchen tap.');
  });

  test('is bound in office and packet', () => {
    const page = pagesOf(bathroom).find(({ figures }) => figures?.shape === 'filled')!;
    expect(page.bundles).toEqual(['office', 'packet']);
  });
});
