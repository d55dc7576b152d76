import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demos, demoTexts, inLanguage, sheetsOf, words } from '../sheets/demos.ts';

const home = join(import.meta.dirname, '../../layouts/words');
const spanish = readdirSync(home)
  .filter((file) => /(?:^|\.)es\.yaml$/.test(file))
  .flatMap((file) => readFileSync(join(home, file), 'utf8').split('\n'));

interface Gate {
  readonly what: string;
  readonly note: string;
}
const gatesOf = ({ sheets }: Pick<(typeof demos)[number], 'sheets'>, part: 'gates' | 'stops') =>
  sheets
    .filter(({ template }) => template === 'job-sheet')
    .flatMap(({ data }) => (data as Record<typeof part, readonly Gate[]>)[part]);

describe('one word for one thing', () => {
  test('in Spanish a hollow sound alone is told as hollow: a dip, an opening and a cut have words of their own', () => {
    const hollow = spanish.filter((line) => /\bhuecos?\b/i.test(line));
    expect(hollow.length).toBeGreaterThan(0);
    expect(hollow.filter((line) => !/suena a hueco/i.test(line))).toEqual([]);
  });

  test('a layer has its usual name in a stop too', () => {
    const text = inLanguage(demoTexts['fernlea-boot-room']!, 'es');
    const [stop] = gatesOf(sheetsOf('fernlea-boot-room', text, ['job-sheet']), 'stops');
    expect(stop!.note).toContain('vinilo en lámina');
    expect(stop!.note).not.toContain('sheet vinyl');
  });

  test.each(demos)('the note of a height does not name again what stands before it: $slug', (demo) => {
    const twice = gatesOf(demo, 'gates').filter(({ what, note }) =>
      note.toLowerCase().startsWith(what.toLowerCase()),
    );
    expect(twice).toEqual([]);
  });

  test.each([
    ['en', 'none would be seen'],
    ['es', 'ninguno se vería'],
    ['pt', 'nenhum seria visto'],
  ])('of a reading that nothing checks no slip would be seen: %s', (lang, told) => {
    expect(words.say(lang)('sheet.measuring.anySlip')).toBe(told);
  });
});
