import { describe, expect, test } from 'vitest';
import { momentFigures } from '../pages/support/printedFigures.ts';
import { beforeLaid, demos, demoTexts, sheetsOf, sheetsOnce, words } from './demos.ts';

type Demo = (typeof demos)[number];

/** The other system's print of a job: what nobody wrote for, and what a reader checks first. */
const otherPrint = (text: string) =>
  text
    .replace(/units: mm, saw step: [^,]+/, 'units: INCHES, saw step: 1/16 in')
    .replace(/units: inches, saw step: [^,]+/, 'units: mm, saw step: 1 mm')
    .replace('INCHES', 'inches');
const all: readonly Demo[] = [
  ...demos,
  ...Object.entries(demoTexts).map(([slug, text]) => sheetsOnce(slug, otherPrint(text))),
];
const cases = all.map((demo) => [`${demo.slug} in ${demo.packet.spec.print.system}`, demo] as const);

const dataOf = <T>({ sheets }: Demo, name: string) =>
  sheets.filter(({ template }) => template === name).map(({ data }) => data as T);

/** Words with plain spaces, and none within `a.m.`. */
const plain = (text: string) => text.replace(/\s/g, ' ').replaceAll('. m', '.m');

/** Numbers of a printed figure, whatever its decimal mark. */
const numberIn = (text: string) => Number(/[\d.,]+/.exec(text)![0].replace(',', '.'));

describe('mortar is one rate on all sheets', () => {
  test.each(cases)(
    '%s: what the zones take adds up, as printed, to what the tally says they take',
    (_, demo) => {
      const zones = dataOf<{ mortar: string; rate: string }>(demo, 'zone');
      const [tally] = dataOf<{ materials: readonly { sum: readonly string[] }[] }>(demo, 'material-tally');
      const lines = tally!.materials.flatMap(({ sum }) => sum);
      const said = lines.map((line) => / = ([\d.,]+ (?:lb|kg)); /.exec(line)?.[1]).find((one) => one)!;
      const sum = zones.reduce((total, { mortar }) => total + numberIn(mortar), 0);
      expect(sum.toFixed(1)).toBe(numberIn(said).toFixed(1));
    },
  );

  test.each(cases)('%s: each zone names the rate that it goes by and the trowel of the job', (_, demo) => {
    const by = new Set(demo.packet.surfaces.flatMap(({ zones }) => zones).map(({ mortarBy }) => mortarBy));
    const rules = demo.packet.materials
      .filter(({ what }) => what === 'mortar')
      .flatMap(({ sum }) => sum)
      .find(({ code }) => /mortar\.sum\.(?:bag|notch|bed)Rules$/.test(code))!.code;
    expect([...by].map((one) => `material.mortar.sum.${one}Rules`)).toEqual([rules]);
    for (const { rate } of dataOf<{ rate: string }>(demo, 'zone')) expect(rate).toMatch(/\d (?:in|mm)$/);
  });
});

test('powder by the deeper bed that the heights order is not said to be by the notch', () => {
  const [demo] = cases.filter(([name]) => name === 'rowan-bath in inches').map(([, one]) => one);
  const rates = dataOf<{ rate: string }>(demo!, 'zone').map(({ rate }) => plain(rate));
  expect([...new Set(rates)]).toHaveLength(1);
  expect(rates[0]).toMatch(/^for the bed of 1\/8 in that is ordered, trowel/);
  const codes = demo!.packet.materials
    .filter(({ what }) => what === 'mortar')
    .flatMap(({ sum }) => sum.map(({ code }) => code));
  expect(codes.filter((code) => code.endsWith('Rules'))).toEqual(['material.mortar.sum.bedRules']);
  expect(JSON.stringify(dataOf(demo!, 'material-tally'))).toContain(
    'The bed that the heights order is the larger',
  );
});

describe('mortar that lies under a board', () => {
  interface Row {
    readonly sum: readonly string[];
    readonly amount: string;
    readonly buy: string;
  }
  const [, text] = Object.entries(demoTexts).find(([slug]) => slug === 'fernlea-boot-room')!;
  const thick = (inch: string) => text.replace('mortar: 3/32 in,', `mortar: ${inch} in,`);
  const beds = ['3/32', '1/64', '1/8', '5/32', '1/2'].flatMap((inch) =>
    [thick(inch), otherPrint(thick(inch))].map((job) => sheetsOf('bed', job, ['material-tally'])),
  );
  const rows = beds.flatMap((demo) =>
    dataOf<{ materials: readonly Row[] }>(demo, 'material-tally').flatMap(({ materials }) =>
      materials.filter(({ sum }) => /^\S+ (?:in|mm) on /.test(sum[0]!)),
    ),
  );

  test('is bought by the bag, and its sum adds up by pencil', () => {
    expect(rows.length).toBeGreaterThanOrEqual(beds.length);
    for (const { sum, amount, buy } of rows) {
      const numbers = (line: string) => line.match(/\d[\d.]*/g)!.map(Number);
      const [litres, density, laid] = numbers(sum[0]!.split(': ')[1]!);
      const volume = sum[0]!.includes(' fl oz ') ? litres! / 128 : litres!; // NIST Handbook 44, Appendix C
      expect((volume * density!).toFixed(1)).toBe(laid!.toFixed(1));
      expect(numberIn(amount)).toBe(laid);
      const [from, share, mass, bags, bag] = numbers(sum[1]!);
      expect(from).toBe(laid);
      expect((from! * (1 + share! / 100)).toFixed(1)).toBe(mass!.toFixed(1));
      expect(bags).toBe(Math.ceil(mass! / bag!));
      expect(buy).toBe(`${bags} ${bags === 1 ? 'bag' : 'bags'}`);
    }
  });
});

describe('the crew reads one trowel', () => {
  const advised = cases.filter(([, { packet }]) =>
    packet.limits.some(({ rule, wouldPass }) => rule === 'trowel' && wouldPass),
  );

  test.each(advised)('%s: the job sheet names that of the zone sheets before the advice', (_, demo) => {
    const [{ gates } = { gates: [] }] = dataOf<{ gates: readonly { note: string }[] }>(demo, 'job-sheet');
    const [{ rate } = { rate: '' }] = dataOf<{ rate: string }>(demo, 'zone');
    const trowel = /\S+ (?:in|mm) × \S+ (?:in|mm)$/.exec(rate)![0];
    const named = gates.filter(({ note }) => note.includes(trowel));
    expect(named).toHaveLength(1);
    expect(named[0]!.note.indexOf(trowel)).toBeLessThan(named[0]!.note.lastIndexOf(' × '));
  });

  test.each(cases)('%s: one box of the job sheet orders what is done about trowel and bed', (_, demo) => {
    const failing = demo.packet.limits.filter(({ rule, pass }) => /^(?:trowel|bed)$/.test(rule) && !pass);
    const say = demo.sheets.find(({ template }) => template === 'job-sheet')!.lang;
    const names = ['limit.trowel', 'limit.bed'].map((code) => words.say(say)(code));
    const [{ gates } = { gates: [] }] = dataOf<{ gates: readonly { what: string; note: string }[] }>(
      demo,
      'job-sheet',
    );
    const orders = gates.filter(({ what, note }) => names.includes(what) && note !== '');
    expect(orders).toHaveLength(failing.length > 0 ? 1 : 0);
  });

  // By hand: a bed of 12 × 12 / 24 mm at 45° holds 1.6 kg a litre (geometry; from memory); a bag of 50 lb covers 45 sq ft of it (common practice).
  test.each(advised)('%s: mortar is enough for the deeper notch, should it be needed', (_, { packet }) => {
    const { wouldPass } = packet.limits.find(({ rule, pass }) => rule === 'trowel' && !pass)!;
    const { notchWidth, notchDepth, notchSpace } = wouldPass!.figures as Record<string, number>;
    const bedMm = (notchWidth! * notchDepth!) / (notchWidth! + notchSpace!) / 320 / Math.SQRT2;
    const areaM2 = packet.surfaces.reduce((sum, surface) => sum + surface.areaM2, 0);
    const mortar = packet.materials.find(({ what }) => what === 'mortar')!;
    expect(mortar.amount).toBeGreaterThanOrEqual(bedMm * 1.6 * areaM2 * 1.1 * 0.999);
    expect(mortar.buy * packet.spec.products.mortar.bagKg).toBeGreaterThanOrEqual(mortar.amount * 0.999);
  });

  // The bed by hand as above, or the one that the job sheet asks of that notch where it is deeper; figures are printed to a tenth of the unit,
  // 0.45359237 kg a pound (NIST Handbook 44, Appendix C).
  test.each(advised)('%s: each zone tells the powder for the deeper notch too, or has as much', (_, demo) => {
    const { packet } = demo;
    const { wouldPass } = packet.limits.find(({ rule, pass }) => rule === 'trowel' && !pass)!;
    const { notchWidth, notchDepth, notchSpace, asked } = wouldPass!.figures as Record<string, number>;
    const usualMm = (notchWidth! * notchDepth!) / (notchWidth! + notchSpace!) / 320 / Math.SQRT2;
    const areaM2 = packet.surfaces.reduce((sum, surface) => sum + surface.areaM2, 0);
    const wantedKg = areaM2 * Math.max(usualMm, asked! / 320) * 1.6;
    const zones = dataOf<{ mortar: string; deeper: string }>(demo, 'zone');
    const kgPerUnit = packet.spec.print.system === 'mm' ? 1 : 0.45359237;
    const kgOf = (texts: readonly string[]) =>
      texts.reduce((all, text) => all + numberIn(/[\d.,]+ (?:lb|kg)$/.exec(plain(text))?.[0] ?? '0'), 0) *
      kgPerUnit;
    const told = zones.map(({ deeper }) => deeper);
    const own = kgOf(zones.map(({ mortar }) => mortar));
    expect(Math.max(own, kgOf(told))).toBeGreaterThan(wantedKg - 0.1);
    if (own > wantedKg - 0.1) expect(told.every((text) => text === '')).toBe(true);
    else expect(kgOf(told)).toBeLessThan(wantedKg + 0.1);
  });

  test.each(cases)('%s: no zone tells of another notch where the job sheet asks for none', (_, demo) => {
    if (demo.packet.limits.some(({ rule, pass }) => rule === 'trowel' && !pass)) return;
    expect(dataOf<{ deeper: string }>(demo, 'zone').filter(({ deeper }) => deeper !== '')).toEqual([]);
  });

  test.each(cases)('%s: the bed on the job sheet is the bed of the tally', (_, { packet }) => {
    const { sum } = packet.materials.find(({ what }) => what === 'mortar')!;
    const { bed } = sum.find(({ figures }) => figures.bed)!.figures;
    expect(packet.limits.find(({ rule }) => rule === 'trowel')!.found).toBe(bed);
  });

  test('a notch of 10 mm is no notch of 25/64 in, whatever the job is printed in', () => {
    const inInches = all.filter(({ packet }) => packet.spec.print.system === 'inches');
    const texts = JSON.stringify(inInches.map((demo) => [dataOf(demo, 'zone'), dataOf(demo, 'material-tally'), dataOf<{ gates: unknown }>(demo, 'job-sheet').map(({ gates }) => gates)])); // biome-ignore format: three sheets
    expect(texts).toContain('10 mm × 10 mm');
    expect(texts).toContain('8 mm × 8 mm');
    expect(texts).not.toContain('25/64 in × ');
  });
});

describe('when tile may be walked on', () => {
  test.each(cases)('%s: each zone has the day of the calendar and the door for all others', (_, demo) => {
    const [door] = dataOf<{ day: string; clock: string }>(beforeLaid(demo, ['door-sign']), 'door-sign');
    const grout = demo.packet.calendar.find(({ code }) => code === 'grout')!;
    for (const { walks } of dataOf<{ walks: readonly { who: string; from: string }[] }>(demo, 'zone')) {
      expect(walks).toHaveLength(2);
      const [setter, others] = walks;
      const { crew, paper } = demo.packet.spec.print;
      const [, clock] = momentFigures(grout.from, crew[0]!, paper);
      expect(plain(setter!.from).endsWith(` ${clock}`)).toBe(true);
      if (crew[0] === demo.packet.spec.print.owner) expect(others!.from.endsWith(door!.clock)).toBe(true);
      if (demo.packet.spec.print.owner === 'en') expect(others!.from).toBe(`${door!.day}, ${door!.clock}`);
      expect(setter!.who).not.toBe(others!.who);
    }
  });
});
