import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { calendarIcs } from '../../src/exchange/calendarIcs.ts';
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
