import { describe, expect, test } from 'vitest';
import { demos, demoTexts, sheetsOf, words } from './demos.ts';

const dataOf = <T>(demo: Pick<(typeof demos)[number], 'sheets'>, kind: string) =>
  demo.sheets.filter(({ template }) => template === kind).map(({ data }) => data as T);

describe('one figure is told as one number', () => {
  test.each(demos)('of $slug the spares of the care sheet are those of the record', (demo) => {
    const [care] = dataOf<{ keep: number; over: number; several: string }>(demo, 'care-sheet');
    const { lang } = demo.sheets.find(({ template }) => template === 'record')!;
    const [record] = dataOf<{ rows: readonly { what: string; value: string }[] }>(demo, 'record');
    const rows = record!.rows.filter(({ what }) => what === words.say(lang)('record.spares'));
    const told = rows.flatMap(({ value }) => value.split(': ').at(-1)!.match(/\d+/g)!.map(Number));
    expect(told.reduce((sum, one) => sum + one, 0)).toBe(care!.keep + care!.over);
    const said = words.say(lang)('sheet.care-sheet.spares', {
      count: care!.keep,
      over: care!.over,
      several: care!.several,
    });
    for (const number of [care!.keep, care!.over].filter((one) => one > 0))
      expect(said).toContain(String(number));
  });

  test.each(demos)('of $slug a correction of the set-out is that of what was measured', (demo) => {
    const setOut = dataOf<{ adjusted: readonly { correction: string }[] }>(demo, 'set-out');
    const corrections = setOut.flatMap(({ adjusted }) => adjusted.map(({ correction }) => correction));
    const measured = JSON.stringify(demo.sheets.filter(({ name }) => name.startsWith('measuring')));
    expect(corrections.length).toBeGreaterThan(3);
    for (const correction of corrections) expect(measured).toContain(`"${correction}"`);
  });
});

test('a gap where strips are left out is told alike on job sheet, plan and tally, and a nick at a point of tile is none', () => {
  const demo = demos.find(({ slug }) => slug === 'sedge-washroom')!;
  const [job] = dataOf<{ five: { widerGaps: string } }>(demo, 'job-sheet');
  // Hexagon: whole sides of every other course are left out along B-C; along C-D every tile is sawn 1/4 in off it but for nicks.
  expect(job!.five.widerGaps).toBe('B-C: at 3 places up to 15/32 in, no strip there');
  const plan = JSON.stringify(dataOf(demo, 'layout-plan'));
  expect(plan).toContain('No strip at 3 places along B-C. Gap there up to 15/32 in, else 1/4 in;');
  expect(plan).toContain(
    'Points of tile left out at C-D: 6 nicks up to 15/32 in from the wall; else the gap is 1/4 in.',
  );
  const tally = JSON.stringify(dataOf(demo, 'material-tally'));
  // Three sides of hexagon of 4.7 in are 14 in, or 1.2 ft.
  expect(tally).toMatch(/Gap at the edges 15\/32 in wide at most, \S+ in deep, 1\.2 ft/);
});

const floor = (wide: string) => `
    walls:
      A-B: {read: ${wide}}
      B-C: {read: 70 in}
      C-D: {read: ${wide}}
      D-A: {read: 70 in}
    diagonals: {A-C: ${Math.hypot(Number.parseFloat(wide), 70).toFixed(2)} in}`;
const floors = `title: Two rooms
owner: A. Owner
place: 1 Any Street
revision: {letter: A, date: 2027-03-01}
print: {paper: letter, units: inches, crew: en, owner: en}
tile:
  field: {name: Gray, read: [12 in x 12 in], thick: 3/8 in, edge: rectified, material: porcelain}
joint: 1/8 in
floors:
  hall:${floor('65 in')}
  pantry:${floor('91 in')}
`;

test('a saw list of several floors names the floor in each head, and one of a single floor none', () => {
  const zonesOf = (slug: string, text: string) => {
    const demo = sheetsOf(slug, text, ['saw-list']);
    const heads = dataOf<{ zones?: readonly { floor: string }[] }>(demo, 'saw-list').flatMap(
      ({ zones = [] }) => zones,
    );
    return { names: demo.packet.surfaces.map(({ name }) => name), heads: heads.map(({ floor }) => floor) };
  };
  const several = zonesOf('floors', floors);
  expect(several.names.length).toBeGreaterThan(1);
  expect(new Set(several.heads)).toEqual(new Set(several.names));
  const single = zonesOf('quarry-kitchen', demoTexts['quarry-kitchen']!);
  expect(new Set(single.heads)).toEqual(new Set(['']));
});
