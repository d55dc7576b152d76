import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import { makeRows } from '../../src/cuts/makeRows.ts';
import type { Ring } from '../../src/geometry/index.ts';
import { inch, SIXTEENTH } from './support/inches.ts';
import { judgeCuts } from './support/judgeCuts.ts';
import { judgeRows, rowText } from './support/judgeRows.ts';
import { type Floor, layFloor, rectangle } from './support/layFloor.ts';
import { testJob } from './support/testJob.ts';

const print = { step: SIXTEENTH, system: 'inches' } as const;
const gap = inch(1 / 4);

/** All of these are common practice of the trade, no source; the figures follow by arithmetic. */
describe('a room of 15 ft 10 in by 14 ft whose short way almost takes whole tiles', () => {
  const tile = { length: inch(11 + 13 / 16), width: inch(11 + 13 / 16) };
  const joint = inch(3 / 16);
  const outline = rectangle(inch(190), inch(168));
  const [long, short] = [inch(10 + 21 / 32), inch(11 + 21 / 32)];
  const start = (cut: number) => gap + cut + joint;
  const rowsOf = (floor: Partial<Floor>) =>
    makeRows(layFloor({ outline, gap, tile, joint, origin: [start(long), start(short)], ...floor }), print);
  const pieces = (row: ReturnType<typeof rowsOf>[number]) =>
    row.terms.filter(({ what }) => what === 'piece').map(({ exact }) => exact / 8128);

  test('trimmed: 14 full and 10 21/32 the long way, 12 full and 11 21/32 the short way', () => {
    const rows = rowsOf({});
    expect(pieces(rows[1]!)).toEqual([10.65625, ...Array(14).fill(11.8125), 10.65625]);
    const across = rows.find(({ axis }) => axis === 'across')!;
    expect(pieces(across)).toEqual([11.65625, ...Array(12).fill(11.8125), 11.65625]);
    expect(judgeRows(rows, 'inches')).toEqual([]);
  });

  test('13 full the short way leave 5 21/32 at each end', () => {
    const across = rowsOf({ origin: [start(long), start(inch(5 + 21 / 32))] }).find(
      ({ axis }) => axis === 'across',
    )!;
    expect(pieces(across)).toEqual([5.65625, ...Array(13).fill(11.8125), 5.65625]);
  });

  test('fourteen whole tiles with a 5/32 joint leave gaps of 19/64 and no cut', () => {
    const narrow = inch(5 / 32);
    const across = rowsOf({ joint: narrow, origin: [gap, inch(19 / 64)] }).find(
      ({ axis }) => axis === 'across',
    )!;
    expect(rowText(across)).toBe(`19/64 + ${Array(14).fill('11 13/16').join(' + ')} + 19/64`);
  });
});

describe('a 7 1/2 in clear hole for a flange under 17 3/4 in tiles, 15 in from the side and 12 in from the back', () => {
  const floor = (left: number): Floor => ({
    outline: rectangle(inch(60), inch(96)),
    gap,
    tile: { length: inch(17.75), width: inch(17.75) },
    joint: inch(3 / 16),
    origin: [inch(0.25 + left + 3 / 16), inch(0.25 + 11.78125 + 3 / 16)],
    circles: [{ name: 'flange', centre: [inch(15), inch(12)], radius: inch(3.5) }],
  });
  const round = (left: number) =>
    makeCuts(testJob(), layFloor(floor(left))).cuts.filter(({ sizes }) =>
      sizes.some(({ what }) => what === 'holeDiameter'),
    );

  test('balanced, four tiles are cut round it', () => {
    expect(round(11.71875).flatMap(({ pieces }) => pieces)).toHaveLength(4);
  });

  test('shifted by 1 13/32, two tiles carry a plain curve with the centre from factory edges, at most four sizes', () => {
    const cuts = round(10.3125);
    expect(cuts.map(({ kind, pieces }) => [kind, pieces.length])).toEqual([
      ['curve', 1],
      ['curve', 1],
    ]);
    for (const { sizes } of cuts) {
      expect(sizes.length).toBeLessThanOrEqual(4);
      expect(sizes.find(({ what }) => what === 'holeDiameter')!.saw).toBe(inch(7.5));
    }
  });
});

describe('16 ft by 18 ft with a corner cut off at 45° and a hearth, 19 11/16 in tile', () => {
  const leg = 33.941125;
  const room: Ring = [
    [0, 0],
    [75, 0],
    [75, 18],
    [117, 18],
    [117, 0],
    [192, 0],
    [192, 216 - leg],
    [192 - leg, 216],
    [0, 216],
  ].map(([x, y]) => [inch(x!), inch(y!)]);
  const layout = layFloor({
    outline: room,
    gap,
    tile: { length: inch(19.6875), width: inch(19.6875) },
    joint: inch(3 / 16),
    origin: [inch(0.25 + 16.15625 + 0.1875), inch(0.25 + 18.21875 + 0.1875)],
  });
  const cuts = makeCuts(testJob(), layout);

  test('all 110 positions are used: 72 whole, 38 cut, and each cut laid back is its piece', () => {
    expect(layout.pieces).toHaveLength(110);
    expect(layout.pieces.filter(({ whole }) => whole)).toHaveLength(72);
    expect(judgeCuts(layout, cuts, SIXTEENTH)).toEqual([]);
    expect(judgeRows(cuts.rows, 'inches')).toEqual([]);
  });

  test('the slope gives points, the hearth strips 7/32 deep, sawn at 3/16', () => {
    expect(cuts.cuts.some(({ kind }) => kind === 'point')).toBe(true);
    const strips = cuts.cuts.filter(({ sizes }) =>
      sizes.some(({ exact }) => Math.abs(exact - inch(7 / 32)) <= 1),
    );
    expect(strips.flatMap(({ pieces }) => pieces).length).toBeGreaterThanOrEqual(2);
  });
});
