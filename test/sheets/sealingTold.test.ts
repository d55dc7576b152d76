import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import { demoTexts, inLanguage, sheetsOf, words } from './demos.ts';

const KINDS = ['calendar', 'care-sheet', 'job-sheet', 'base-sheet'];
const dataOf = <T>({ sheets }: Pick<ReturnType<typeof sheetsOf>, 'sheets'>, name: string) =>
  sheets.find(({ template }) => template === name)!.data as T;

interface Row {
  readonly from: string;
  readonly what: string;
  readonly wait: string;
}
interface Care {
  readonly sealOn: string;
  readonly sealFrom: string;
  readonly sealTo: string;
  readonly closed: string;
  readonly late: string;
}
interface Back {
  readonly goes: readonly { readonly what: string; readonly back: string }[];
}

/** The washroom begun on any weekday, and on the days on which its setter works. */
const told = (lang: string, from: string, days: string) =>
  sheetsOf(
    'sedge-washroom',
    inLanguage(demoTexts['sedge-washroom']!, lang)
      .replace('from: 2027-06-21', `from: ${from}`)
      .replace('days: mon-fri', `days: ${days}`),
    KINDS,
  );

const begun = ['2027-06-21', '2027-06-22', '2027-06-23', '2027-06-24', '2027-06-25'].flatMap((from) =>
  languages.map((lang) => [lang, from] as const),
);

describe.each(begun)('sealing in %s, begun on %s', (lang, from) => {
  const demo = told(lang, from, 'mon-fri');
  const say = words.say(lang);
  const { calendar } = demo.packet;
  const at = (code: string) => calendar.find((one) => one.code === code)!;
  const rows = dataOf<{ rows: readonly Row[] }>(demo, 'calendar').rows;
  const care = dataOf<Care>(demo, 'care-sheet');
  const rowOf = (what: string) => rows.find((row) => row.what === what)!;

  test('the window has both its ends for the setter and the owner', () => {
    const [first, last] = ['sealFrom', 'sealTo'].map((code) => rowOf(say(`calendar.${code}`)));
    expect([care.sealFrom, care.sealTo]).toEqual([first!.from, last!.from]);
    expect(care.sealTo).not.toBe('');
  });

  test('the owner reads the day that is booked, be it in the window or after it', () => {
    expect(care.sealOn).toBe(rowOf(say('calendar.seal', { who: 'none' })).from);
  });

  test('where it is missed calendar, care sheet and job sheet say by when it should be, and when it is; else none does', () => {
    const booked = rowOf(say('calendar.seal', { who: 'none' }));
    const { gates } = dataOf<{ gates: readonly { what: string; note: string }[] }>(demo, 'job-sheet');
    const gate = gates.find(({ what }) => what === say('gate.sealLate'));
    if (at('seal').to! > at('sealTo').from) {
      expect(booked.wait).toContain(care.sealTo);
      expect(care.late).toContain(care.sealTo);
      expect(gate?.note).toContain(care.sealTo);
      expect(gate?.note).toContain(booked.from);
    } else expect([gate, care.late]).toEqual([undefined, '']);
  });
});

test('one of those weekdays misses it, and one does not', () => {
  const late = begun
    .filter(([lang]) => lang === 'en')
    .map((args) => dataOf<Care>(told(...args, 'mon-fri'), 'care-sheet').late !== '');
  expect(new Set(late).size).toBe(2);
});

// Grouted on Monday 28 June by 11:00, heavy use from Wednesday 07:00; sealed on Wednesday at 08:00, or on Thursday.
describe.each(languages)('the toilet goes back in %s', (lang) => {
  const backOf = (seal: string) => {
    const text = inLanguage(demoTexts['sedge-washroom']!, lang).replace(
      'colour: steel 2}',
      `colour: steel 2, heavy: 44 h, seal after: ${seal}}`,
    );
    const demo = sheetsOf('sedge-washroom', text, KINDS);
    const { rows } = dataOf<{ rows: readonly (Row & { to: string })[] }>(demo, 'calendar');
    const toilet = rows.filter((_, i) => demo.packet.calendar[i]!.concerns === 'toilet');
    const closed = rows.find(({ what }) => what === words.say(lang)('calendar.sealerCures'))!;
    const { goes } = dataOf<Back>(demo, 'base-sheet');
    const [fixture] = goes.filter(({ what }) => what === words.say(lang)('thing.toilet'));
    return { toilet, closed, back: fixture!.back };
  };

  test('when the sealer is dry, where the room is closed again on that day', () => {
    const { toilet, closed, back } = backOf('40-90 h');
    expect(toilet.map(({ from }) => from)).toEqual([closed.to]);
    expect(back).toContain(closed.to);
  });

  test('before, where a working day lies between', () => {
    const { toilet, closed, back } = backOf('60-108 h');
    expect(toilet).toHaveLength(1);
    expect(toilet[0]!.from).not.toBe(closed.to);
    expect(back).toContain(toilet[0]!.from);
  });
});

// Porous tile is sealed before grouting, whatever the grout (common practice, no source).
describe.each(languages)('limestone with epoxy grout in %s', (lang) => {
  const say = words.say(lang);
  const stone = (products: string) =>
    sheetsOf(
      'sedge-washroom',
      inLanguage(demoTexts['sedge-washroom']!, lang)
        .replace('material: porcelain', 'material: stone')
        .replace(/^ {2}sealer: .*\n/m, '')
        .replace(/^ {2}grout: .*$/m, `  grout: {kind: epoxy}${products}`),
      [...KINDS, 'record', 'material-tally'],
    );
  const gatesOf = (demo: ReturnType<typeof stone>) =>
    dataOf<{ gates: readonly { what: string }[] }>(demo, 'job-sheet').gates.map(({ what }) => what);

  test('is sealed before grouting: calendar, tally, owner and record say so', () => {
    const demo = stone('');
    expect(demo.packet.calendar.map(({ code }) => code)).toContain('sealTile');
    expect(demo.packet.materials.map(({ what }) => what)).toContain('sealer');
    expect(dataOf<{ sealedBefore: boolean }>(demo, 'care-sheet').sealedBefore).toBe(true);
    expect(JSON.stringify(dataOf(demo, 'record'))).toContain(say('record.sealerKind.penetrating'));
    expect(gatesOf(demo)).not.toContain(say('gate.unsealed'));
  });

  test('is asked about on the job sheet where the job wants no sealer', () => {
    const demo = stone('\n  sealer: {kind: none}');
    expect(demo.packet.calendar.map(({ code }) => code)).not.toContain('sealTile');
    expect(gatesOf(demo)).toContain(say('gate.unsealed'));
  });
});
