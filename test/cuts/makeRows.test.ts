import { describe, expect, test } from 'vitest';
import { makeRows } from '../../src/cuts/makeRows.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { inch, mm, SIXTEENTH } from './support/inches.ts';
import { judgeRows, rowText } from './support/judgeRows.ts';
import { type Floor, layFloor, rectangle } from './support/layFloor.ts';

const print = { step: SIXTEENTH, system: 'inches' } as const;
const tile = { length: inch(11 + 13 / 16), width: inch(11 + 13 / 16) };
const joint = inch(3 / 16);
const gap = inch(1 / 4);
/** A floor whose first whole tile follows a cut of `cut` inches in the lower left corner. */
const floor = (width: number, height: number, cut: number, more: Partial<Floor> = {}): Floor => {
  const start = gap + inch(cut) + joint;
  return { outline: rectangle(inch(width), inch(height)), gap, tile, joint, origin: [start, start], ...more };
};

describe('a row closes: pieces, joints and gaps add up wall to wall', () => {
  test('trade arithmetic: 2 × 7 21/32 + 9 × 11 13/16 + 10 × 3/16 + 2 × 1/4 = 124', () => {
    const rows = makeRows(layFloor(floor(124, 40, 7 + 21 / 32)), print);
    const [first] = rows;
    expect(first!.terms.filter(({ what }) => what === 'piece').map(({ exact }) => exact / 8128)).toEqual([
      7.65625,
      ...Array(9).fill(11.8125),
      7.65625,
    ]);
    expect(judgeRows(rows, 'inches')).toEqual([]);
  });

  test('as printed, what the saw takes off a cut is in the gap beside it', () => {
    const [first] = makeRows(layFloor(floor(124, 40, 7 + 21 / 32)), print);
    expect(rowText(first!)).toBe(`9/32 + 7 5/8 + ${Array(9).fill('11 13/16').join(' + ')} + 7 5/8 + 9/32`);
  });

  test('space 8, joint 1/8, gap 1/4 leave 7 5/8 to cut (NAVEDTRA 14044 ch. 6)', () => {
    const ending = floor(0.25 + 2 * 11.8125 + 0.125 + 8, 40, 0, { joint: inch(1 / 8), origin: [gap, gap] });
    expect(rowText(makeRows(layFloor(ending), print)[0]!)).toBe('1/4 + 11 13/16 + 11 13/16 + 7 5/8 + 1/4');
  });

  test.each([0, 4, 6, 3, 7.5])(
    'rows run along both axes, also across courses that step by %f in, where they meet no joint along them',
    (shift) => {
      const rows = makeRows(layFloor(floor(60, 40, 7, { shift: inch(shift) })), print);
      expect([...new Set(rows.map(({ axis }) => axis))]).toEqual(['along', 'across']);
      expect(judgeRows(rows, 'inches')).toEqual([]);
      const across = rows.filter(({ axis }) => axis === 'across');
      // 60 in hold five tiles of 11 13/16 with their joints and parts at both ends; each line is a joint short of a gap only at the walls.
      expect(across.length).toBeGreaterThanOrEqual(5);
      for (const { terms } of across)
        expect(terms.slice(1, -1).map(({ what }) => what)).toEqual(
          terms.slice(1, -1).map((_, i) => (i % 2 === 0 ? 'piece' : 'joint')),
        );
    },
  );

  test('a row is named by the quadrants it runs through and its place from the crossing', () => {
    const rows = makeRows(layFloor(floor(40, 30, 7)), print);
    expect(rows.map(({ id }) => id)).toEqual(['MN1', 'KL1', 'KL2', 'LM1', 'KN1', 'KN2', 'KN3']);
  });

  test.each(['1/2}', '1/3}', '1/3, alternating: yes}'])(
    'so is one across a running bond {%s, wherever its line meets no joint',
    (bond) => {
      const file = `
title: Running
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 11 13/16 in x 5 13/16 in}}
joint: 3/16 in
floor:
  walls: {A-B: 10 ft, B-C: 8 ft, C-D: 10 ft, D-A: 8 ft}
  pattern: {running: ${bond}
`;
      const { job, problems } = readJob(file, 'job.yaml');
      expect(problems).toEqual([]);
      const made = makePacket(job!);
      const rows = 'packet' in made ? made.packet.surfaces[0]!.rows : [];
      const across = rows.filter(({ axis }) => axis === 'across');
      expect(across.length).toBeGreaterThan(8);
      for (const { id, terms } of across)
        for (const piece of terms.filter(({ what }) => what === 'piece'))
          expect(`${piece.id} in ${id}`).toContain(`${/\d+/.exec(id)![0]}-`);
    },
  );

  test('an obstacle ends a row, and its edges are named at both ends', () => {
    const boxes = [{ name: 'island', ring: rectangle(inch(20), inch(12), [inch(30), inch(20)]) }];
    const rows = makeRows(layFloor(floor(80, 50, 7, { boxes })), print);
    const split = rows.filter(({ id }) => id.startsWith('KL2'));
    expect(split.map(({ id, edges }) => [id, ...edges])).toEqual([
      ['KL2a', 'D-A', 'island:4'],
      ['KL2b', 'island:2', 'B-C'],
    ]);
    expect(judgeRows(rows, 'inches')).toEqual([]);
  });

  test('a dropped strip shows as a larger gap', () => {
    const layout = layFloor(floor(60, 40, 0.2));
    const without = {
      ...layout,
      pieces: layout.pieces.filter(({ id }) => !id.startsWith('L') && !id.startsWith('M')),
    };
    const [first] = makeRows(without, print);
    expect(first!.terms[0]).toMatchObject({ what: 'gap', id: 'D-A', exact: gap + inch(0.2) + joint });
    expect(judgeRows(makeRows(without, print), 'inches')).toEqual([]);
  });

  test('a tile whose mean is no multiple of 1/64 does not drift: a hundred of them still close', () => {
    const odd = { length: inch(1) + 50, width: inch(1) + 50 };
    const rows = makeRows(layFloor(floor(104, 4, 0.7, { tile: odd, joint: inch(1 / 16) })), print);
    expect(rows[0]!.terms.length).toBeGreaterThan(180);
    expect(judgeRows(rows, 'inches')).toEqual([]);
    const last = rows[0]!.terms[rows[0]!.terms.length - 1]!;
    expect(Math.abs(last.saw - last.exact)).toBeLessThan(3 * SIXTEENTH);
  });

  test('a line runs through the middle of most of its pieces: beside a slanting wall a row of strips still has one', () => {
    const outline = rectangle(inch(60), inch(96)).map(([x, y]) => [x - (y > 0 ? inch(1) : 0), y] as const);
    const door = [
      [-5, 30],
      [-5, 50],
      [0, 50],
    ].map(([x, y]) => [inch(x!), inch(y!)] as const);
    const recess = [outline[0]!, outline[1]!, outline[2]!, outline[3]!, ...[...door].reverse()];
    const rows = makeRows(layFloor(floor(60, 96, 3, { outline: recess })), print);
    const left = rows.filter(({ id }) => id.startsWith('LM1'));
    expect(left.flatMap(({ terms }) => terms.filter(({ what }) => what === 'piece')).length).toBeGreaterThan(
      6,
    );
  });

  test('in millimetres rows close to the tenth', () => {
    const metric: Floor = {
      outline: rectangle(mm(2630), mm(1204)),
      gap: mm(6),
      tile: { length: mm(299.7), width: mm(299.7) },
      joint: mm(3),
      origin: [mm(140), mm(90.05)],
    };
    expect(judgeRows(makeRows(layFloor(metric), { step: 320, system: 'mm' }), 'mm')).toEqual([]);
  });
});
