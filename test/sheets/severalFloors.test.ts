import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { calendarIcs } from '../../src/exchange/calendarIcs.ts';
import { noteLines } from '../../src/site/noteLines.ts';
import { sheetsOf, words } from './demos.ts';

/** Two floors of the same walls, so that zones, cuts and edges of both bear the same names; both are set in two zones. */
const floor = (pattern: string) => `
    walls: {A-B: 9 ft, B-C: 12 ft, C-D: 9 ft, D-A: 12 ft}
    obstacles:
      pipe: {circle: 4 in, from A-B: 30 in, from D-A: 30 in, meets: pipe}
    zones: 2
    pattern: {${pattern}}`;
const text = `title: Two rooms
owner: A. Owner
place: 1 Any Street
revision: {letter: A, date: 2027-03-01}
print: {paper: letter, units: inches, crew: [en, es], owner: en}
tile:
  field: {name: Gray, read: [12 in x 12 in], thick: 3/8 in, edge: rectified, material: porcelain}
joint: 1/8 in
floors:
  guest bath:${floor('straight, tile: field')}
  bath:${floor('running: 1/2, tile: field')}
base:
  below: plywood
`;
const { packet, sheets } = sheetsOf('two', text);
const FLOORS = ['guest bath', 'bath'];
const ofKind = (kind: string) => sheets.filter(({ template }) => template === kind);
const dataOf = <T>(kind: string) => ofKind(kind).map(({ data }) => data as T);

describe('a job of several floors', () => {
  test('has two floors whose zones and cuts bear the same numbers', () => {
    expect(packet.surfaces.map(({ zones }) => zones.map(({ number }) => number))).toEqual([
      [1, 2],
      [1, 2],
    ]);
    for (const { cuts } of packet.surfaces) expect(cuts.some(isHard)).toBe(true);
  });

  test('has a page for each sheet, whose name can stand in an address and in a style', () => {
    const names = sheets.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z][a-z0-9-]*$/i);
  });

  test.each(['set-out', 'zone', 'layout-plan', 'base-sheet'])(
    'says in the title of each page of the kind %s which floor it is of',
    (kind) => {
      const titles = ofKind(kind).map(({ title }) => title);
      for (const name of FLOORS) {
        expect(titles.some((title) => title.endsWith(` · ${name}`))).toBe(true);
      }
      expect(titles.every((title) => FLOORS.some((name) => title.endsWith(` · ${name}`)))).toBe(true);
      expect(new Set(titles).size).toBe(titles.length);
    },
  );

  test('gives each zone the time at which it is set', () => {
    const set = packet.calendar.filter(({ code }) => code === 'set');
    expect(set.map(({ floor: of, zone }) => [of, zone])).toEqual(
      FLOORS.flatMap((name) => [1, 2].map((zone) => [name, zone])),
    );
    expect(new Set(set.map(({ from }) => from)).size).toBe(4);
    const told = dataOf<{ set: string }>('zone').map(({ set: at }) => at);
    expect(new Set(told).size).toBe(4);
    expect(told).toHaveLength(4);
  });

  test('names the floor of each zone in the calendar, on paper and as a file', () => {
    const rows = JSON.stringify(dataOf('calendar'));
    const ics = calendarIcs(packet, words.say('en'));
    for (const name of FLOORS)
      for (const zone of [1, 2]) {
        expect(rows).toContain(`Set zone ${zone}, ${name}"`);
        expect(ics).toMatch(new RegExp(`SUMMARY:Two rooms: Set zone ${zone}\\\\, ${name}\\r`));
      }
    const ids = [...ics.matchAll(/^UID:(.*)$/gm)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('has no two drawings of one id, and none with a space in it', () => {
    const printed = sheets.filter(({ bundles }) => bundles.includes('packet'));
    const ids = printed.flatMap(({ data }) =>
      [...JSON.stringify(data).matchAll(/ id=\\"([^"]*)\\"/g)].map(([, id]) => id!),
    );
    expect(ids.length).toBeGreaterThan(20);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    expect(ids.filter((id) => /\s/.test(id))).toEqual([]);
  });

  test('names the floor on each card, in each list of tiles by zone, in each comparison of starts and each table of rows', () => {
    const cards = dataOf<{ cards: { floor: string }[] }>('hard-cuts').flatMap((one) => one.cards);
    expect(new Set(cards.map((card) => card.floor))).toEqual(new Set(FLOORS));
    const lists = dataOf<{ byTile?: { number: number; floor: string }[] }>('saw-list').flatMap(
      ({ byTile = [] }) => byTile,
    );
    expect(lists.map(({ number, floor: of }) => `${of} ${number}`)).toEqual(
      FLOORS.flatMap((name) => [`${name} 1`, `${name} 2`]),
    );
    for (const kind of ['alternatives', 'row-sums']) {
      const [{ surfaces }] = dataOf<{ surfaces: { floor: string }[] }>(kind) as [
        { surfaces: { floor: string }[] },
      ];
      expect(surfaces.map((one) => one.floor)).toEqual(FLOORS);
    }
  });
});

/** Two floors out of square, each with a web, a strip, a taper and readings of which the job sheet has to tell. */
const odd = (pattern: string) => `
    walls:
      A-B: {read: 10 ft 3 in, seen: focal}
      B-C: {read: 9 ft 1 in, seen: focal}
      C-D: {read: 10 ft 4 1/2 in, gap: 1/2 in}
      D-A: {read: 9 ft 0 in, seen: focal}
    diagonals: {A-C: 13 ft 8 1/2 in}
    obstacles:
      post: {rectangle: 5 in x 5 in, from A-B: 60 in, from D-A: 49 in, meets: column}
    pattern: {${pattern}}
    start: {along: joint on D-A, across: joint on A-B}`;
const oddText = text
  .replace(
    /floors:[\s\S]*base:/,
    `floors:\n  guest bath:${odd('straight, tile: field')}\n  bath:${odd('running: 1/2, tile: slab')}\nbase:`,
  )
  .replace(
    'joint:',
    `  slab: {name: White, read: [12 in x 24 in], thick: 3/8 in, edge: rectified, material: porcelain}\njoint:`,
  );

describe('a job of several floors that are out of square', () => {
  const { packet: made, sheets: printed } = sheetsOf('odd', oddText);
  const dataIn = <T>(kind: string) =>
    printed.filter(({ template }) => template === kind).map(({ data }) => data as T);
  const [job] = dataIn<{
    gates: { what: string }[];
    five: { widerGaps: string; direction: string; tile: { name: string; others: string[] } };
  }>('job-sheet');

  test.each(['gate.web', 'gate.strip', 'gate.noCheck', 'gate.taper'])(
    'names the floor at each box of the job sheet about %s',
    (code) => {
      const [begins] = words.say('en')(code, { pieces: '*' }).split('*');
      const found = job!.gates.filter(({ what }) => what.startsWith(begins!)).map(({ what }) => what);
      expect(found).not.toEqual([]);
      expect(found.filter((what) => !FLOORS.some((name) => what.endsWith(` · ${name}`)))).toEqual([]);
    },
  );

  test('names the floor at a box about readings that do not agree', () => {
    const shut = sheetsOf(
      'shut',
      oddText.replace(/(\n {2}bath:[\s\S]*A-C: 13 ft 8 1\/2 in)/, '$1, B-D: 13 ft 9 in'),
      ['job-sheet'],
    );
    const { gates } = shut.sheets[0]!.data as { gates: { what: string; second: string; holds?: boolean }[] };
    const held = gates.filter(({ holds }) => holds);
    expect(held.map(({ what }) => what)).toEqual([expect.stringMatching(/ · bath$/)]);
    expect(held[0]!.second).toContain(' · bath. ');
  });

  test('tells gap, direction and tile of each floor among the five figures', () => {
    const { widerGaps, direction, tile } = job!.five;
    for (const told of [widerGaps, direction]) {
      expect(told).toMatch(/^guest bath: /);
      expect(told).toContain(' · bath: ');
    }
    expect(direction).toContain('bath: Running bond');
    expect([tile.name, tile.others]).toEqual(['Gray', ['bath: White, 12 in × 24 in']]);
  });

  test('names the floor of each soft joint in the material tally', () => {
    const [tally] = dataIn<{ materials: { sum: string[] }[] }>('material-tally');
    const told = tally!.materials
      .flatMap(({ sum }) => sum)
      .filter((one) => /gap at the edges \d|joints \d.* wide/i.test(one));
    expect(told.length).toBeGreaterThan(4);
    expect(told.filter((one) => !FLOORS.some((name) => one.startsWith(`${name}: `)))).toEqual([]);
    expect(new Set(told).size).toBe(told.length);
  });

  test('has a plan of each floor in the record, and its table once', () => {
    const records = printed.filter(({ template }) => template === 'record');
    expect(records.map(({ title }) => title)).toEqual(FLOORS.map((name) => `Record · ${name}`));
    const pages = dataIn<{ rows: unknown[]; plan: string }>('record');
    expect(pages.map(({ rows }) => rows.length > 0)).toEqual([true, false]);
    for (const { plan } of pages) expect(plan).toContain('<svg');
    expect(new Set(pages.map(({ plan }) => plan)).size).toBe(2);
  });

  test('names in its notes the floor that each is about, and tells each of its own walls', () => {
    const notes = made.notes.filter(({ code }) => /^(fault|taper|room)\./.test(code));
    expect(new Set(notes.map(({ surface }) => surface))).toEqual(new Set(FLOORS));
    const told = noteLines(made, words, 'en').map(({ text: one }) => one);
    for (const name of FLOORS)
      expect(told).toContain(`${name}: No check possible: measure one diagonal (B-D).`);
  });
});

test('a job of one floor names it nowhere', () => {
  const one = sheetsOf(
    'one',
    `${text.slice(0, text.indexOf('  bath:'))}${text.slice(text.indexOf('base:'))}`,
    ['zone', 'set-out', 'calendar'],
  );
  expect(one.packet.surfaces).toHaveLength(1);
  expect(JSON.stringify([one.sheets, one.packet.calendar])).not.toContain('"Zone 1 ·');
  expect(one.packet.calendar.every(({ floor: of }) => of === undefined)).toBe(true);
});
