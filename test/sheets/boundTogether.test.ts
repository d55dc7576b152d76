import { describe, expect, test } from 'vitest';
import { demos, demoTexts, inLanguage, sheetsOf, sheetsOnce, words } from './demos.ts';

/** How the words send a reader to a sheet by its title, in each language. */
const SENDS: Readonly<Record<string, (title: string) => readonly string[]>> = {
  en: (title) => [`sheet ${title}`, `${title} sheet`, `${title} has`, `(${title})`, `${title},`],
  es: (title) => [`hoja ${title}`, `hoja de ${title}`, `${title}, `],
  pt: (title) => [`folha ${title}`, `folha de ${title}`, `${title}, `],
};

/** Titles of sheets that the crew's sheets send to and that are not bound with them. */
function sentAway({ sheets }: ReturnType<typeof sheetsOf>, lang: string): readonly string[] {
  const crew = sheets.filter(({ bundles }) => bundles.includes('crew'));
  const away = sheets.filter(({ bundles }) => !bundles.includes('crew')).map(({ title }) => title);
  const text = crew.map(({ data }) => JSON.stringify(data)).join(' ');
  return away.filter((title) => SENDS[lang]!(title).some((words) => text.includes(words)));
}

describe.each(Object.entries(demoTexts))('the crew of %s', (slug, text) => {
  test.each(words.languages)('has every sheet that its sheets in %s send it to', (lang) => {
    expect(sentAway(sheetsOnce(slug, inLanguage(text, lang)), lang)).toEqual([]);
  });

  test('has the sheet of the base, right after the job sheet', () => {
    const { sheets } = demos.find((demo) => demo.slug === slug)!;
    const crew = sheets.filter(({ bundles }) => bundles.includes('crew'));
    expect(crew.map(({ template }) => template).slice(0, 2)).toEqual(['job-sheet', 'base-sheet']);
  });
});

describe('the gate of what moves in the base', () => {
  const noteOf = (change: (text: string) => string) => {
    const [sheet] = sheetsOf('quarry-kitchen', change(demoTexts['quarry-kitchen']!), ['job-sheet']).sheets;
    const { gates } = sheet!.data as { gates: readonly { what: string; note: string }[] };
    return gates.find(({ what }) => what === words.say('en')('limit.baseJoint'))?.note ?? '';
  };

  test('says where it lies and which sheet shows it', () => {
    expect(noteOf((text) => text)).toMatch(/^8 ft from A-B: sheet Base\. /);
  });

  test('names cracks by their own words, and of many places the first three', () => {
    const cracked = noteOf((text) =>
      text.replace(
        /joints: \{from A-B: 8 ft\}/,
        'joints: {from A-B: 8 ft}\n  cracks: {by the sink: moving, by the stove: moving, at the door: still, in the corner: moving}',
      ),
    );
    expect(cracked).toMatch(/^8 ft from A-B, by the sink, by the stove …: sheet Base\. /);
  });
});
