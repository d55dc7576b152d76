import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Point } from '../../src/geometry/index.ts';
import { inch, SIXTEENTH } from './support/inches.ts';
import { judgeCuts } from './support/judgeCuts.ts';
import { judgeRows } from './support/judgeRows.ts';
import { type Floor, layFloor, rectangle } from './support/layFloor.ts';
import { testJob } from './support/testJob.ts';

const tile = { length: inch(11 + 13 / 16), width: inch(11 + 13 / 16) };
const plain: Floor = {
  outline: rectangle(inch(124), inch(124)),
  gap: inch(1 / 4),
  tile,
  joint: inch(3 / 16),
  origin: [inch(0.25 + 7 + 21 / 32 + 3 / 16), inch(0.25 + 7 + 21 / 32 + 3 / 16)],
};
const cutsOf = (floor: Floor, turns: 'any' | 'half' | 'none' = 'any') =>
  makeCuts(testJob({}, { turns }), layFloor(floor)).cuts;

describe('equal cuts share one number', () => {
  test('a balanced square room has one rip and one corner', () => {
    expect(
      cutsOf(plain).map(({ number, kind, hand, pieces }) => [number, kind, hand, pieces.length]),
    ).toEqual([
      [1, 'rip', 'none', 36],
      [2, 'corner', 'none', 4],
    ]);
  });

  test('a tile with a direction keeps the way it lies: each wall has its own rip', () => {
    expect(cutsOf(plain, 'half').map(({ kind }) => kind)).toEqual(['rip', 'rip', 'corner', 'corner']);
    expect(cutsOf(plain, 'none').filter(({ kind }) => kind === 'rip')).toHaveLength(4);
  });

  test('mirror images never merge: they are told apart by hand and lie as each other’s mirror image', () => {
    const boxes = [{ name: 'post', ring: rectangle(inch(4), inch(9.5), [inch(60), inch(15)]) }];
    const outline = rectangle(inch(124), inch(124));
    // The post stands evenly over a joint: it takes the lower right of one tile and the lower left of the next.
    const middle =
      inch(62) - Math.round(plain.joint / 2) - tile.length * 5 - plain.joint * 5 + tile.length + plain.joint;
    const notches = cutsOf({ ...plain, outline, boxes, origin: [middle, inch(8)] }).filter(
      ({ kind }) => kind === 'notch',
    );
    const hands = notches.map(({ hand, pieces }) => [hand, pieces.length]);
    expect(hands.filter(([hand]) => hand === 'left')).toHaveLength(
      hands.filter(([hand]) => hand === 'right').length,
    );
    expect(hands.some(([hand]) => hand === 'none')).toBe(false);
  });

  test('numbers run by kind and size, the largest first', () => {
    const rips = cutsOf({ ...plain, origin: [inch(5), inch(9)] }).filter(({ kind }) => kind === 'rip');
    const sizes = rips.map(({ sizes }) => sizes[0]!.saw);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });
});

describe('laid back on whole tiles, every cut is its piece', () => {
  const inches = (least: number, most: number) =>
    fc.integer({ min: least * 64, max: most * 64 }).map((n) => n * 127);
  const nudge = fc.integer({ min: -8128, max: 8128 });
  const rooms = fc.record({
    width: inches(40, 90),
    height: inches(40, 70),
    nudges: fc.array(fc.tuple(nudge, nudge), { minLength: 4, maxLength: 4 }),
    tile: fc.constantFrom([11.8125, 11.8125], [11.875, 23.875], [17.75, 17.75], [5.96, 11.97]),
    start: fc.tuple(inches(0, 24), inches(0, 24)),
    quarter: fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const),
    shift: fc.constantFrom(0, 0, 3.1),
    turns: fc.constantFrom('any' as const, 'half' as const, 'none' as const),
    flange: fc.tuple(inches(12, 28), inches(12, 28), inches(1, 4)),
    cabinet: fc.tuple(inches(10, 30), inches(8, 20)),
  });

  test('on random rooms out of square, with a flange and a cabinet; and every row closes', () => {
    fc.assert(
      fc.property(rooms, (room) => {
        const { width, height, nudges } = room;
        const corners: Point[] = [
          [0, 0],
          [width, 0],
          [width, height],
          [0, height],
        ];
        const outline = corners.map(([x, y], i): Point => [x + nudges[i]![0], y + nudges[i]![1]]);
        const layout = layFloor({
          ...plain,
          outline,
          tile: { length: inch(room.tile[0]!), width: inch(room.tile[1]!) },
          origin: room.start,
          quarter: room.quarter,
          shift: inch(room.shift),
          circles: [{ name: 'flange', centre: [room.flange[0], room.flange[1]], radius: room.flange[2] }],
          boxes: [
            {
              name: 'cabinet',
              ring: rectangle(room.cabinet[0], room.cabinet[1], [
                width - room.cabinet[0],
                height - room.cabinet[1],
              ]),
            },
          ],
        });
        const cuts = makeCuts(testJob({}, { turns: room.turns }), layout);
        expect(judgeCuts(layout, cuts, SIXTEENTH)).toEqual([]);
        expect(judgeRows(cuts.rows, 'inches')).toEqual([]);
      }),
      { seed: 20270301, numRuns: process.env.LONG === '1' ? 2000 : 30 },
    );
  });
});
