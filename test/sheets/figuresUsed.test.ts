import { describe, expect, test } from 'vitest';
import { demos, demoTexts, sheetsOf } from './demos.ts';

type Made = Pick<(typeof demos)[number], 'sheets' | 'packet'>;

const KINDS = ['job-sheet', 'material-tally', 'alternatives'];
const inMm = (slug: string) =>
  sheetsOf(
    slug,
    demoTexts[slug]!.replace('units: inches', 'units: mm').replace(/saw step: [^,]*/, 'saw step: 1 mm'),
    KINDS,
  );
const inInches = (slug: string) =>
  sheetsOf(
    slug,
    demoTexts[slug]!.replace('units: mm', 'units: inches').replace(/saw step: [^,]*/, 'saw step: 1/16 in'),
    KINDS,
  );
const gatesOf = ({ sheets }: Made) =>
  sheets
    .filter(({ template }) => template === 'job-sheet')
    .flatMap(
      ({ data }) => (data as { gates: readonly { what: string; found: string; note: string }[] }).gates,
    );
const textOf = ({ sheets }: Made, template: string) =>
  JSON.stringify(sheets.filter((sheet) => sheet.template === template).map(({ data }) => data));

describe('figures that somebody uses', () => {
  test('what a bottle covers is told to a tenth from ten on', () => {
    const rate = / ([\d.]+) m²\/L/.exec(textOf(inMm('fernlea-boot-room'), 'material-tally'))![1]!;
    // A bottle, of a litre where nobody says, covers 400 sq ft: 37.161 m².
    expect(rate).toBe('37.2');
  });

  // By hand: 3.19 gal × 13.35 lb/gal are 42.6 lb; with 13.4 they would be 42.7 lb.
  test('a rate that is multiplied has the decimals that the product wants', () => {
    const lines = textOf(demos.find(({ slug }) => slug === 'fernlea-boot-room')!, 'material-tally');
    const [, gallons, pounds, sum] = /([\d.]+) gal × ([\d.]+) lb\/gal = ([\d.]+) lb/.exec(lines)!;
    expect(Math.abs(Number(gallons) * Number(pounds) - Number(sum))).toBeLessThan(0.05);
  });

  test('what is sawn in all is told in metres', () => {
    expect(textOf(inMm('almond-hall'), 'alternatives')).toMatch(/"cutLength":"\d+(?:,\d)? m"/);
  });

  test('what is counted has a word behind its number', () => {
    const [joints] = gatesOf(demos.find(({ slug }) => slug === 'quarry-kitchen')!).filter(({ what }) =>
      what.startsWith('Joints and moving cracks'),
    );
    expect(joints!.found).toBe('1 place');
  });

  test('the trowel that is advised is one of the units of the sheet, the own one as it was bought', () => {
    const notes = [inInches('linden-entry'), inMm('rowan-bath'), inInches('almond-hall')].flatMap((made) =>
      gatesOf(made).flatMap(({ note }) =>
        / mm × | in × /.test(note) ? [[made.packet.spec.print.system, note]] : [],
      ),
    );
    const advised = notes.filter(([, note]) => /advised|aconseja|recomienda/.test(note!));
    expect(advised.length).toBeGreaterThan(0);
    for (const [system, note] of advised) {
      const last = /([\d/.,]+) (in|mm) × ([\d/.,]+) (in|mm)(?!.* × )/.exec(note!)!;
      expect([system, last[2], last[4]]).toEqual([
        system,
        ...(system === 'mm' ? ['mm', 'mm'] : ['in', 'in']),
      ]);
    }
  });

  test('a joint of 3 mm on a sheet in inches is not told as one that takes another grout', () => {
    const [linden, rowan] = [inInches('linden-entry'), inInches('rowan-bath')];
    expect(textOf(linden, 'material-tally')).toMatch(/Joint 3 mm: unsanded/);
    expect(textOf(rowan, 'material-tally')).toMatch(/Joint 1\/8 in: sanded/);
  });
});
