import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import { demos, demoTexts, inLanguage, sheetsOf, sheetsOnce, words } from './demos.ts';

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
    const demo = sheetsOnce(slug, inLanguage(demoTexts[slug]!, lang));
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

describe('a box that stops or holds the work', () => {
  interface Box {
    readonly what: string;
    readonly note: string;
    readonly second: string;
    readonly state: string;
    readonly holds?: boolean;
  }
  interface Boxes {
    readonly stops: readonly Box[];
    readonly gates: readonly Box[];
  }
  const boxesOf = (demo: Demo) => {
    const { stops, gates: others } = dataOf<Boxes>(demo, 'job-sheet');
    return [...stops, ...others.filter(({ holds }) => holds)];
  };
  const speaking = (slug: string, crew: string) =>
    sheetsOf(slug, demoTexts[slug]!.replace(/crew: \[[^\]]*\]/, `crew: ${crew}`), [
      'job-sheet',
      'base-sheet',
    ]);
  const pairs = languages.flatMap((one) => languages.filter((two) => two !== one).map((two) => [one, two]));

  test.each(
    ['rowan-bath', 'fernlea-boot-room'].flatMap((slug) =>
      pairs.map(([one, two]) => [slug, one!, two!] as const),
    ),
  )('of %s says in %s and %s what it stops and what to do', (slug, one, two) => {
    const both = boxesOf(speaking(slug, `[${one}, ${two}]`));
    const alone = boxesOf(speaking(slug, two));
    expect(both.length).toBe(slug === 'rowan-bath' ? 3 : 2);
    both.forEach(({ second }, i) => {
      const { what, note } = alone[i]!;
      const [own] = note.split(' · ');
      expect(second).toContain(what);
      expect(second).toContain(own);
    });
  });

  test('stands in both on the base sheet too, and so does the caution at its foot', () => {
    const { note } = dataOf<{ note: { first: string; second: string } }>(
      speaking('rowan-bath', '[en, es]'),
      'base-sheet',
    );
    expect(note.first).toBe(words.say('en')('sheet.base-sheet.note'));
    expect(note.second).toBe(words.say('es')('sheet.base-sheet.note'));
    for (const { second } of dataOf<Boxes>(speaking('fernlea-boot-room', '[en, es]'), 'base-sheet').stops)
      expect(second).toContain('PARE');
  });

  test.each(['rowan-bath', 'fernlea-boot-room', 'sedge-washroom'])(
    'leaves each other gate of %s that has not passed its name in both languages, one that fails what to do too',
    (slug) => {
      interface Named extends Box {
        readonly brief: boolean;
      }
      const own = demos.find((demo) => demo.slug === slug)!;
      const gatesOf = (demo: Demo) => dataOf<{ gates: readonly Named[] }>(demo, 'job-sheet').gates;
      const alone = gatesOf(speaking(slug, 'es'));
      const open = gatesOf(own).filter(({ holds, state }) => !holds && state !== 'pass');
      expect(open.length).toBeGreaterThan(8);
      for (const { what, second } of open) expect(second, what).not.toBe('');
      const names = alone.map(({ what, state, note }) => {
        const name = what.replace(/ \([^)]*\)/g, '');
        // Of what it asks the figures that follow a semicolon stand in the first language.
        return state === 'fail' && note !== ''
          ? `${name}: ${note.split('; ')[0]!.replace(/\.$/, '')}.`
          : name;
      });
      expect(open.map(({ second }) => second).filter((name) => !names.includes(name))).toEqual([]);
    },
  );

  test('says of old paint what its short line would, children out, and stands in its place', () => {
    for (const lang of languages) {
      const [paint, old] = ['limit.house.lead.pass', 'short.caution.lead'].map((code) =>
        words.say(lang)(code),
      );
      const children = /children|niños|crianças/i;
      expect([children.test(paint!), children.test(old!)]).toEqual([true, true]);
    }
    const { cautions } = dataOf<{ cautions: readonly { first: string }[] }>(
      speaking('rowan-bath', 'en'),
      'job-sheet',
    );
    expect(cautions.map(({ first }) => first)).not.toContain(words.say('en')('short.caution.lead'));
    expect(cautions.length).toBeGreaterThan(5);
  });
});
