import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import { demos, demoTexts, inLanguage, sheetsOf, words } from './demos.ts';

type Demo = (typeof demos)[number];

const dataOf = <T>({ sheets }: Demo, name: string) =>
  sheets.find(({ template }) => template === name)!.data as T;
const goes = (demo: Demo) =>
  dataOf<{ goes: readonly { what: string; who: string; out: string }[] }>(demo, 'base-sheet').goes;
const gates = (demo: Demo) =>
  dataOf<{ gates: readonly { what: string; note: string }[] }>(demo, 'job-sheet').gates;

describe('what may hold asbestos is lifted by nobody before a laboratory has answered', () => {
  test.each(
    ['rowan-bath', 'fernlea-boot-room'].flatMap((slug) => languages.map((lang) => [slug, lang] as const)),
  )('%s in %s: base sheet and job sheet name no setter for it and no hour', (slug, lang) => {
    const demo = sheetsOf(slug, inLanguage(demoTexts[slug]!, lang));
    const say = words.say(lang);
    const vinyl = goes(demo).find(({ what }) => what === say('thing.sheet-vinyl'))!;
    expect(vinyl).toMatchObject({ who: say('height.who.laboratory'), out: '' });
    expect(vinyl.who).not.toContain(say('height.who.setter'));
    const gate = gates(demo).find(({ what }) => what.includes(say('thing.sheet-vinyl')))!;
    expect(gate.note).toBe(say('gate.comesUpStopped'));
  });

  test('an old floor that stops nobody is still taken up by the setter before the first tile', () => {
    const linden = demos.find(({ slug }) => slug === 'linden-entry')!;
    const tile = goes(linden).find(({ what }) => what === 'old tile')!;
    expect(tile.who).toBe('setter');
    expect(tile.out).toMatch(/^before /);
  });
});
