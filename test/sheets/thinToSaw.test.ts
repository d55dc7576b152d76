import { describe, expect, test } from 'vitest';
import { sheetsOf } from './demos.ts';

/**
 * A room in 12 in tile begun whole on one side: with gaps of 1/4 in that no base covers further, what is left on the other is the room's
 * width less five modules of 12 1/8 in and both gaps.
 */
const roomOf = (wide: string, thick: string) =>
  sheetsOf(
    'strip',
    `
title: A strip
place: 1 Any Street
status: planned
revision: {letter: A, date: 2027-01-04}
print: {paper: letter, units: inches, saw step: 1/16 in, crew: en, owner: en}
tile:
  field: {name: square, read: [12 in x 12 in], thick: ${thick}, edge: rectified, turns: any, material: porcelain}
joint: 1/8 in
floor:
  gap max: 1/4 in
  walls: {A-B: ${wide}, B-C: 50 in, C-D: ${wide}, D-A: 50 in}
  start: {along: tile on D-A, across: best}
`,
    ['job-sheet', 'layout-plan'],
  );

interface Gate {
  readonly what: string;
  readonly found: string;
  readonly limit: string;
  readonly signed?: boolean;
  readonly note: string;
}
const gatesOf = (wide: string, thick: string) => {
  const { data } = roomOf(wide, thick).sheets.find(({ template }) => template === 'job-sheet')!;
  return (data as { gates: readonly Gate[] }).gates.filter(({ what }) => what.startsWith('Strip thinner'));
};

// 61 3/8 in less 1/2 and 60 5/8 in leaves 1/4 in, thinner than a tile of 3/8 in.
describe('a strip narrower than its tile is thick', () => {
  test('is a line of the job sheet to sign, with every piece', () => {
    const [gate, ...rest] = gatesOf('61 3/8 in', '3/8 in');
    expect(rest).toEqual([]);
    expect(gate).toMatchObject({ found: '1/4 in', limit: '3/8 in', signed: true });
    expect(gate!.what.match(/[K-N]\d+-\d+/g)!.length).toBeGreaterThanOrEqual(4);
  });

  test('asks for no signature before it is sawn, as nobody saws it', () => {
    const [{ note }] = gatesOf('61 3/8 in', '3/8 in') as [Gate];
    expect(note).toContain('do not saw it');
    expect(note).not.toContain('before it is sawn');
  });

  test('stands on the crew’s plan', () => {
    const { data } = roomOf('61 3/8 in', '3/8 in').sheets.find(({ template }) => template === 'layout-plan')!;
    expect((data as { faults: readonly string[] }).faults.join(' ')).toContain('Too thin');
  });
});

test('a strip as wide as the tile is thick, or wider, asks for no signature', () => {
  expect(gatesOf('61 1/2 in', '3/8 in')).toEqual([]);
  expect(gatesOf('61 3/4 in', '3/8 in')).toEqual([]);
  expect(gatesOf('61 3/8 in', '1/4 in')).toEqual([]);
});

/** The line of the job sheet for a pipe whose hole of 4 in begins `off` from the factory edge of the whole tile on D-A, with no gap round it. */
const webOf = (off: string, thick: string) => {
  const { sheets } = sheetsOf(
    'web',
    `
title: A web
revision: {letter: A, date: 2027-01-04}
print: {paper: letter, units: inches, saw step: 1/16 in, crew: en, owner: en}
tile: {field: {name: square, read: [12 in x 12 in], thick: ${thick}}}
joint: 1/8 in
floor:
  gap max: 1/4 in
  walls: {A-B: 60 in, B-C: 60 in, C-D: 60 in, D-A: 60 in}
  start: {along: tile on D-A, across: tile on A-B}
  obstacles: {pipe: {circle: 4 in, from A-B: 18 in, from D-A: ${off}, meets: pipe, gap: 0 in}}
`,
    ['job-sheet'],
  );
  const { data } = sheets.find(({ template }) => template === 'job-sheet')!;
  return (data as { gates: readonly Gate[] }).gates.filter(({ what }) => what.startsWith('Tile left'));
};

// The tile on D-A reaches from 1/4 to 12 1/4 in. A hole of 4 in whose middle is 10 in off D-A ends at 12 in, 1/4 in before its edge; at 9 13/16 in, 7/16 in.
describe('tile that stays beside an opening', () => {
  test('is not to be sawn where it is thinner than the tile is thick: what is signed is an opening through to the edge', () => {
    const [gate] = webOf('10 in', '3/8 in');
    expect(gate).toMatchObject({ found: '1/4 in', signed: true });
    expect(gate!.note).toContain('do not saw it');
    expect(gate!.note).not.toContain('before it is sawn');
  });

  test('is to be signed for before it is sawn where it is thicker than that', () => {
    const [gate] = webOf('9 13/16 in', '3/8 in');
    expect(gate).toMatchObject({ found: '7/16 in', signed: true });
    expect(gate!.note).toContain('before it is sawn');
  });
});
