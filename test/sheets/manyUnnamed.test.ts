import { describe, expect, test } from 'vitest';
import { sheetsOf } from './demos.ts';

interface Named {
  readonly unnamed: readonly string[];
  readonly unnamedCount: number;
}

/** A long hall in 2 in tile at 45 degrees: of some 300 cuts hardly one has room for its name. */
const hall = sheetsOf(
  'hall',
  `
title: A hall
place: 1 Any Street
status: planned
revision: {letter: A, date: 2027-01-04}
print: {paper: letter, units: inches, saw step: 1/16 in, crew: en, owner: en}
work: {from: 2027-01-11, days: mon-fri, hours: 08:00-16:00, pace: 15 sq ft an hour}
tile:
  field: {name: small square, read: [2 in x 2 in], thick: 9 mm, edge: rectified, turns: any, material: porcelain}
joint: 1/8 in
floor:
  walls: {A-B: {read: 30 ft}, B-C: {read: 4 ft}, C-D: {read: 30 ft}, D-A: {read: 4 ft}}
  diagonals: {A-C: 30 ft 3 3/16 in}
  exposure: dry
  pattern: {straight: {turned: 45}}
  start: {along: best, across: best}
`,
  ['layout-plan', 'zone'],
);

describe('of a floor with hundreds of pieces too small to name', () => {
  const [plan] = hall.sheets.filter(({ template }) => template === 'layout-plan');
  const { unnamed, unnamedCount } = plan!.data as unknown as Named;

  test('the layout plan says how many it has no room for', () => {
    expect(unnamed).toEqual([]);
    expect(unnamedCount).toBeGreaterThan(100);
  });

  test('the zone sheets have each cut, on their plans or in their lists, with its number', () => {
    const zones = hall.sheets.filter(({ template }) => ['zone', 'zone-names'].includes(template));
    const printed = new Set(JSON.stringify(zones.map(({ data }) => data)).match(/[A-Z]?\d+(-\d+)?/g));
    const cuts = hall.packet.surfaces.flatMap(({ pieces }) => pieces.filter(({ whole }) => !whole));
    expect(cuts.length).toBeGreaterThan(100);
    expect(cuts.filter(({ id }) => !printed.has(id)).map(({ id }) => id)).toEqual([]);
  });
});
