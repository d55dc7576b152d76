import { describe, expect, test } from 'vitest';
import { demos, demoTexts, inLanguage, sheetsOf } from './demos.ts';

interface Row {
  readonly from: string;
  readonly what: string;
  readonly wait: string;
  readonly source: string;
}

const KINDS = ['calendar', 'material-tally', 'door-sign', 'care-sheet', 'choice-sheet', 'base-sheet'];
const dataOf = <T>({ sheets }: Pick<(typeof demos)[number], 'sheets'>, name: string) =>
  sheets.filter(({ template }) => template === name).map(({ data }) => data as T);
const rowsOf = (demo: (typeof demos)[number]) => dataOf<{ rows: readonly Row[] }>(demo, 'calendar')[0]!.rows;
const fernlea = demos.find(({ slug }) => slug === 'fernlea-boot-room')!;

describe('times told on the calendar', () => {
  test.each(demos.map((demo) => [demo.slug, demo] as const))(
    '%s: the areas that are set add up to that of the tally',
    (_, demo) => {
      const zones = rowsOf(demo).filter(({ what }) => /^(?:Set zone|Colocar la zona) \d/.test(what));
      expect(zones).not.toEqual([]);
      const areas = zones.flatMap(({ wait }) => /^([\d.,]+) (?:sq ft|m²) (?:at|a) /.exec(wait)?.[1] ?? []);
      const [tally] = dataOf<{ materials: readonly { sum: readonly string[] }[] }>(demo, 'material-tally');
      const said = tally!.materials
        .flatMap(({ sum }) => sum)
        .map((line) => /(?:field|embaldosada) ([\d.,]+)/.exec(line)?.[1])
        .find((one) => one)!;
      const sum = areas.reduce((total, area) => total + Number(area.replace(',', '.')), 0);
      expect(sum).toBeCloseTo(Number(said.replace(',', '.')), 0);
    },
  );

  test('a wait that the cold makes longer names the wait in a warm room, and both temperatures', () => {
    expect(rowsOf(fernlea).map(({ wait }) => wait)).toContainEqual(
      expect.stringMatching(/^84 h: 72 h at 70 °F, longer at 66 °F/),
    );
  });

  test('a time put off to the morning says from when', () => {
    expect(rowsOf(fernlea).map(({ wait }) => wait)).toContainEqual(
      expect.stringMatching(/that is .*, 11\sPM, at night: put off to the morning$/),
    );
  });

  test("no more is said to stand on the product's sheet than the job file gives", () => {
    const last = rowsOf(fernlea).find(({ what }) => what === 'Seal not after')!;
    expect(last.source).toBe('two days for it: common practice, no source');
  });
});

describe('the clock is that of the language where the paper is used', () => {
  const clockOf = (lang: string, paper: string) => {
    const text = inLanguage(demoTexts['fernlea-boot-room']!, lang).replace(
      'paper: letter',
      `paper: ${paper}`,
    );
    const demo = sheetsOf('fernlea-boot-room', text, KINDS);
    return dataOf<{ clock: string }>(demo, 'door-sign')[0]!.clock.replace(/\s/g, ' ');
  };

  // The walk is due at 11:00. Twice twelve hours in English and Spanish in the United States, else twenty-four: common practice.
  test.each([
    ['en', 'letter', '11 AM'],
    ['es', 'letter', '11 a.m.'],
    ['en', 'a4', '11:00'],
    ['es', 'a4', '11:00'],
    ['pt', 'a4', '11:00'],
  ])('%s on %s: %s', (lang, paper, clock) => {
    expect(clockOf(lang, paper).replaceAll('. m', '.m')).toBe(clock);
  });
});

describe('the owner is told when the room is closed again', () => {
  test.each(['calendar', 'door-sign', 'care-sheet'])('on the %s', (name) => {
    expect(JSON.stringify(dataOf(fernlea, name))).toMatch(/while the sealer cures/);
  });

  test('what goes back before sealing is sealed round, or comes out again', () => {
    const backs = demos
      .filter(({ slug }) => /rowan|quarry/.test(slug))
      .flatMap((demo) => dataOf<{ goes: readonly { sealed: string }[] }>(demo, 'base-sheet'))
      .flatMap(({ goes }) => goes.map(({ sealed }) => sealed));
    expect(backs).toContainEqual('seal round it');
    expect(backs).toContainEqual('out again to seal');
  });
});

describe('the owner is told from when to when there is no toilet', () => {
  const told = (demo: Pick<(typeof demos)[number], 'sheets'>) =>
    ['door-sign', 'care-sheet', 'choice-sheet'].map(
      (name) => dataOf<{ noToilet: string }>(demo, name)[0]?.noToilet ?? '',
    );

  test('where the only one of the house is in the room, on each sheet for the owner', () => {
    for (const one of told(fernlea))
      expect(one).toMatch(/Mon, Mar 8, 8\sAM at the latest until Fri, Mar 19, 7\sAM/);
    expect(told(fernlea)[2]).toMatch(/while the sealer cures, Fri, Mar 19, 8\sAM – Sat, Mar 20, 11\sAM/);
  });

  test('and nowhere else', () => {
    for (const demo of demos.filter((one) => one !== fernlea))
      expect(told(demo).filter((one) => one !== '')).toEqual([]);
  });

  test.each(['es', 'pt'])('in %s', (lang) => {
    const text = inLanguage(demoTexts['fernlea-boot-room']!, lang);
    expect(told(sheetsOf('fernlea-boot-room', text, KINDS)).every((one) => one.length > 40)).toBe(true);
  });
});
