import { describe, expect, test } from 'vitest';
import { faultLines } from '../../src/sheets/faultLines.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { demos, demoTexts, inLanguage, sheetsOf, words } from './demos.ts';

interface Row {
  readonly what: string;
  readonly value: string;
}
const record = (slug: string) =>
  (
    demos.find((one) => one.slug === slug)!.sheets.find(({ template }) => template === 'record')!.data as {
      rows: Row[];
    }
  ).rows;

describe('the record', () => {
  test('says of which tile the spares are, where there are several', () => {
    const spares = record('linden-entry').filter(({ what }) => what === words.say('en')('record.spares'));
    expect(spares.map(({ value }) => value.split(':')[0])).toEqual(['Ash plank porcelain', 'Dark ash strip']);
    expect(record('rowan-bath').find(({ what }) => what === words.say('en')('record.spares'))!.value).toMatch(
      /^\d/,
    );
  });

  test('counts no tiles that are not left', () => {
    for (const lang of words.languages) {
      const say = words.say(lang);
      expect(say('record.spareCount', { keep: 6, over: 0 })).not.toContain('0');
      expect(say('record.spareCount', { keep: 6, over: 2 })).toContain('2');
    }
  });
});

test('an owner reads of a toilet and not of its flange', () => {
  const drawings = demos.flatMap(({ sheets }) =>
    sheets
      .filter(({ template }) => template === 'choice-sheet' || template === 'record')
      .map(({ data }) => JSON.stringify(data)),
  );
  expect(drawings.filter((text) => />flange</.test(text))).toEqual([]);
  expect(drawings.some((text) => />toilet</.test(text))).toBe(true);
});

test('a floor whose walls run off is not said to have nothing to say', () => {
  const { packet } = demos.find(({ slug }) => slug === 'fernlea-boot-room')!;
  for (const lang of words.languages) {
    const lines = faultLines(
      sheetContext(packet, { lang, say: words.say(lang) }),
      packet.surfaces[0]!,
      'all',
    );
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join(' ')).not.toMatch(/Nothing to say|Nada que decir|Nada a dizer/);
  }
});

test('of a job that is not begun nothing is told as done: the floor that is not sealed', () => {
  expect(words.say('es')('sheet.care-sheet.notSealed')).not.toMatch(/selló/);
  expect(words.say('pt')('sheet.care-sheet.notSealed')).not.toMatch(/foi selado/);
});

// Spanish has the point where letter paper is used. Source: Unicode CLDR, locales es-US and es-ES.
test('the foot has the decimal mark of the figures on its sheet', () => {
  const halves = (paper: string) => {
    const text = inLanguage(demoTexts['linden-entry']!, 'es').replace('paper: a4', `paper: ${paper}`);
    return new Set(sheetsOf('linden-entry', text, ['zone', 'layout-plan']).sheets.map(({ half }) => half));
  };
  expect([...halves('letter')]).toEqual(['0.5']);
  expect([...halves('a4')]).toEqual(['0,5']);
});

// By arithmetic: 0.5 in 100 are 1/200; 1/64 in in 4 in are 1/256, the next finer 64th that a rule shows on a bar of 4 in.
test('the foot tells how true a check bar must be in the units of the print', () => {
  for (const lang of words.languages) {
    const say = words.say(lang);
    expect(say('site.printNote', { units: 'inches', half: '0.5' })).toMatch(/1\/64 in .*4 in/);
    expect(say('site.printNote', { units: 'inches', half: '0.5' })).not.toContain('mm');
    expect(say('site.printNote', { units: 'mm', half: '0.5' })).toMatch(/mm .*100 mm/);
    expect(say('site.printNote', { units: 'mm', half: '0.5' })).not.toMatch(/\bin\b.*\d in\b/);
  }
});
