import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import { sheetsOf, words } from './demos.ts';

interface Gate {
  readonly what: string;
  readonly note: string;
  readonly second: string;
  readonly limit: string;
  readonly state: string;
  readonly holds?: boolean;
}

interface Wish {
  readonly tile?: string;
  readonly floor?: string;
  readonly base?: string;
  readonly status?: string;
  readonly crew?: string;
}

const doorway = '  doorways: {hall: {in: A-B, from A: 10 in, clear: 30 in, beyond: later}}\n';

const jobOf = ({ tile = '', floor = doorway, base = '', status = 'planned', crew = 'en' }: Wish) =>
  sheetsOf(
    'start',
    `
title: A start
place: 1 Any Street
status: ${status}
revision: {letter: A, date: 2027-01-04}
print: {paper: letter, units: inches, saw step: 1/16 in, crew: ${crew}, owner: en}
tile:
  field: {name: Fawn, read: [12 in x 12 in], thick: 3/8 in, edge: rectified, turns: any, material: porcelain${tile}}
joint: 1/8 in
floor:
  walls: {A-B: 72 in, B-C: 50 in, C-D: 72 in, D-A: 50 in}
${floor}
base:
  below: concrete
  new: {mortar under tile: 1/8 in, tile: 3/8 in}
${base}
`,
    ['job-sheet', 'zone'],
  );

const gatesOf = (wish: Wish) => {
  const { data } = jobOf(wish).sheets.find(({ template }) => template === 'job-sheet')!;
  return (data as { gates: readonly Gate[] }).gates;
};
const about = (wish: Wish, word: string) => gatesOf(wish).filter(({ what }) => what.includes(word));

describe('tile that is there and does not reach', () => {
  test('holds the work until a box of its lot is there', () => {
    const [gate, ...rest] = about({ tile: ', box: {pieces: 10, lot: F-9, on hand: 12}' }, 'too few');
    expect(rest).toEqual([]);
    expect(gate).toMatchObject({ holds: true });
    expect(gate!.note).toMatch(
      /^12 here, \d+ to lay: do not start until a box of the same lot \(F-9\) is here\./,
    );
  });

  test('is said whole in the second language, and without a lot where none is told', () => {
    const [gate] = about({ tile: ', box: {pieces: 10, on hand: 12}', crew: '[en, es]' }, 'too few');
    expect(gate!.note).toContain('of the same lot is here');
    expect(gate!.second).toContain('Hay 12');
  });

  test('is no matter where it reaches, where none is there, or where the floor is laid', () => {
    expect(about({ tile: ', box: {pieces: 10, on hand: 60}' }, 'too few')).toEqual([]);
    expect(about({ tile: ', box: {pieces: 10}' }, 'too few')).toEqual([]);
    expect(about({ tile: ', box: {pieces: 10, on hand: 12}', status: 'finished' }, 'too few')).toEqual([]);
  });
});

const drain = `${doorway}  obstacles: {drain: {rectangle: 30 in x 3 in, from C-D: 1/4 in, from D-A: 20 in, meets: drain}}\n  falls: {from: [A-B]}\n  exposure: wet\n`;
const drainLine = words.say('en')('height.measure.drain');

describe('a drain under new layers', () => {
  const asked = (base: string) =>
    (jobOf({ floor: drain, base }).packet.heights.toMeasure ?? []).filter(
      ({ code }) => code === 'height.measure.drain',
    );

  test('is to be measured, unless its height is told', () => {
    expect(drainLine).toContain('grate');
    expect(asked('')).toEqual([{ name: 'drain', code: 'height.measure.drain' }]);
    expect(asked('  heights: {drain: 1 in above base}')).toEqual([]);
    expect(asked('  heights: {radiator: 4 in above base}')).toHaveLength(1);
  });

  test('has a gate: what its grate must come to', () => {
    const [gate] = about({ floor: drain }, 'grate');
    expect(gate).toMatchObject({ state: 'open', limit: words.say('en')('gate.drainLimit') });
    expect(gate!.note).toContain('1/2 in');
    expect(about({}, 'grate')).toEqual([]);
  });
});

test('a gate that fails says in both languages what is to be done', () => {
  const low = { base: '  heights: {hall door: 5/8 in above base}', crew: '[en, es]' };
  const [gate] = gatesOf(low).filter(({ what }) => what === 'hall door');
  expect(gate).toMatchObject({ state: 'fail' });
  expect(gate!.note).toMatch(/^Take .* off the door/);
  expect(gate!.second).toMatch(/: Rebaje la puerta /);
});

describe('a floor without a doorway', () => {
  test('asks for the way out before the first tile, in both languages', () => {
    const [gate] = about({ floor: '', crew: '[en, es]' }, 'Way out');
    expect(gate).toMatchObject({
      state: 'open',
      second: words.say('es')('gate.wayOut', { several: 'no', floor: '' }),
    });
    expect(about({}, 'Way out')).toEqual([]);
  });

  test.each(languages)('says on each zone that its order is reckoned without one, in %s', (crew) => {
    const zonesOf = (floor: string) =>
      jobOf({ floor, crew })
        .sheets.filter(({ template }) => template === 'zone')
        .map(({ data }) => data);
    expect(zonesOf('').length).toBeGreaterThan(0);
    for (const data of zonesOf('')) expect(data).toMatchObject({ noWayOut: true, wayOut: '' });
    for (const data of zonesOf(doorway)) expect(data).toMatchObject({ noWayOut: false });
  });
});
