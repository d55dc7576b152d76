import { describe, expect, test } from 'vitest';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { sayFigures } from '../../src/sheets/sayFigures.ts';
import { sayThing } from '../../src/sheets/sayThing.ts';
import { demos, demoTexts, inLanguage, sheetsOf, sheetsOnce, words } from './demos.ts';

const packetOf = (slug: string) => demos.find((demo) => demo.slug === slug)!.packet;
const contextOf = (slug: string, lang: string) =>
  sheetContext(packetOf(slug), { lang, say: words.say(lang) });
const [kitchen, bath, bootRoom, hall] = [
  'quarry-kitchen',
  'rowan-bath',
  'fernlea-boot-room',
  'almond-hall',
] as const;

interface GateLine {
  readonly what: string;
  readonly limit: string;
  readonly found: string;
  readonly state: string;
  readonly note: string;
}
const dataOf = (slug: string, name: string) =>
  demos.find((demo) => demo.slug === slug)!.sheets.find(({ template }) => template === name)!.data as Record<
    string,
    unknown
  >;
const gate = (slug: string, code: string) =>
  (dataOf(slug, 'job-sheet').gates as GateLine[]).find(({ what }) => what === words.say('en')(code))!;

describe('figures in sentences', () => {
  // NIST Handbook 44, Appendix C: a gallon is 3.785411784 L and 128 fl oz, a quart a fourth of it.
  test('volumes under a gallon are told in fluid ounces, as tubes and bottles are sold', () => {
    const context = contextOf(bath, 'en');
    expect(sayFigures(context, { tubeLitres: 0.29573529563 })).toEqual({ tubeLitres: '10 fl oz' });
    expect(sayFigures(context, { groutLitres: 7.570823568 })).toEqual({ groutLitres: '2 gal' });
    expect(sayFigures(contextOf(hall, 'es'), { tubeLitres: 0.3 })).toEqual({ tubeLitres: '0,3 L' });
  });

  // Arithmetic: 400 sq ft out of a quart is 37.161216 m² out of 0.946352946 L.
  test('rates bear their unit, and it is one of the job', () => {
    const rates = { coversM2PerLitre: 37.161216 / 0.946352946, bedKgPerM2: 5, mixKgPerLitre: 1.6 };
    expect(sayFigures(contextOf(bath, 'en'), rates)).toEqual({
      coversM2PerLitre: '400 sq ft/qt',
      bedKgPerM2: '1.024 lb/sq ft',
      mixKgPerLitre: '13.35 lb/gal',
    });
    expect(sayFigures(contextOf(hall, 'es'), { bedKgPerM2: 4.53, groutLitresPerM2: 0.179 })).toEqual({
      bedKgPerM2: '4,53 kg/m²',
      groutLitresPerM2: '0,179 L/m²',
    });
  });

  test('one is not said as many', () => {
    const text = JSON.stringify(demos.flatMap(({ sheets }) => sheets.map(({ data }) => data)));
    expect(text.match(/\b1 (?:bags|boxes|tubes|sacos|cajas|cartuchos)\b/g)).toBeNull();
    const moved = words.say('en')('start.simplified', {
      by: '1 in',
      names: 'flange',
      nameCount: 1,
      afterCount: 3,
      beforeCount: 4,
      thinCount: 0,
    });
    expect(moved).toContain('so that flange touches 3 tiles');
  });

  test('a wait is told in hours and minutes, as a clock counts it', () => {
    const rows = dataOf('linden-entry', 'calendar').rows as { readonly wait: string }[];
    const sums = rows.map(({ wait }) => wait.replace(/^.* an hour = /, '').replace(/(?:: | ?;).*$/, ''));
    expect(sums.filter((sum) => !/^(?:\d+ h(?: \d+ min)?)?$/.test(sum))).toEqual([]);
    expect(rows.some(({ wait }) => wait.includes('min'))).toBe(true);
  });

  test('a rule of so many checks for so much floor is told in the units of the job', () => {
    const checks = (slug: string) => dataOf(slug, 'base-sheet').checkCount as string;
    expect(checks(bath)).toContain('one in 100 sq ft,');
    expect(checks(hall)).toContain('una por 9,3 m²,');
  });

  test('a sentence that begins with a name begins with a capital', () => {
    const tapers = demos.flatMap(({ slug }) => dataOf(slug, 'job-sheet').gates as GateLine[]);
    expect(tapers.filter(({ note }) => /(?:^|\. )\p{Ll}[^.]* runs off/u.test(note))).toEqual([]);
  });
});

describe('the gates of the job sheet', () => {
  test('a limit of flatness says under which straightedge it holds', () => {
    expect(gate(bath, 'limit.flatness.ordinary').limit).toBe('1/4 in under 10 ft');
  });

  test('what is longer than any tile is told in feet', () => {
    expect(gate(kitchen, 'limit.movement.dry.along')).toMatchObject({ limit: '25 ft' });
    expect(gate(kitchen, 'limit.flatness.ordinary').note).toContain('a straightedge of 10 ft');
  });

  test('what was only assumed is still to be found', () => {
    expect(gate(kitchen, 'limit.bow')).toMatchObject({ found: '', state: 'open' });
    expect(gate(kitchen, 'limit.temperature')).toMatchObject({ found: '', state: 'open' });
    expect(gate(bootRoom, 'limit.bow')).toMatchObject({ found: '1/64 in', state: 'pass' });
  });

  test('what has no figure for a limit shows what was found alone', () => {
    expect(gate(kitchen, 'limit.baseJoint')).toMatchObject({ limit: '', found: '1 place' });
  });

  test('one tile tells no spread: the limit that rests on it stays blank', () => {
    expect(gate(kitchen, 'limit.joint.spread')).toMatchObject({ limit: '________', state: 'open' });
    expect(gate(bath, 'limit.joint.spread').limit).toBe('9/64 in');
  });
});

describe('what the layout says under its plan', () => {
  test('stands there in full where the plan keeps its scale', () => {
    const faults = dataOf(kitchen, 'layout-plan').faults as string[];
    expect(faults.length).toBeGreaterThan(6);
  });

  test('is else found on a sheet that is named as it is titled', () => {
    for (const lang of words.languages) {
      const say = words.say(lang);
      expect(say('sheet.layout-plan.elsewhere', { count: 8 })).toContain(say('sheet.alternatives.title'));
    }
  });
});

describe('the advice what to read next', () => {
  const next = (text: string) => JSON.stringify(sheetsOf('next', text).sheets.map(({ data }) => data));

  test('is given where the reading would show, and else left out', () => {
    expect(next(demoTexts[hall]!.replace('status: finished', 'status: underway'))).toContain('Conviene leer');
    expect(next(demoTexts[bootRoom]!)).not.toContain('Worth reading next');
  });
});

describe('things that a job file names in its own language', () => {
  const hallIn = (lang: string) => sheetsOnce(hall, inLanguage(demoTexts[hall]!, lang)).sheets;
  const drawn = (lang: string) =>
    String(
      (hallIn(lang).find(({ template }) => template === 'heights')!.data as { drawing: string }).drawing,
    );

  test('are called by their usual name on the sheet: layers, floors and doors', () => {
    expect(drawn('en')).toContain('mortar under tile 4 mm');
    expect(drawn('es')).toContain('adhesivo bajo la baldosa 4 mm');
    expect(drawn('pt')).toContain('piso (living) +1 mm');
  });

  test('keep the name that the job gives them where it is no usual one', () => {
    const say = words.say('es');
    expect(sayThing(say, 'Licensed plumber')).toBe('plomero autorizado');
    expect(sayThing(say, 'J. Halloway')).toBe('J. Halloway');
  });

  test('are called by their kind beside that name, once where the name holds the word', () => {
    const [es, en] = [words.say('es'), words.say('en')];
    expect(sayThing(es, 'vanity cabinet')).toBe('gabinete (vanity cabinet)');
    expect(sayThing(en, 'vanity cabinet')).toBe('vanity cabinet');
    expect(sayThing(en, 'brida')).toBe('flange (brida)');
    expect(sayThing(es, 'brida')).toBe('brida');
    const text = JSON.stringify(
      sheetsOf('rowan-bath', inLanguage(demoTexts['rowan-bath']!, 'es'), [
        'set-out',
        'row-sums',
        'saw-list',
      ]).sheets.map(({ data }) => data),
    );
    expect(text).toContain('gabinete (vanity cabinet)');
  });
});
