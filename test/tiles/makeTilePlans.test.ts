import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Job, TileSpec } from '../../src/job/Job.ts';
import { makeTilePlans } from '../../src/tiles/makeTilePlans.ts';
import { inch, mm } from '../cuts/support/inches.ts';
import { type Floor, layFloor, rectangle } from '../cuts/support/layFloor.ts';
import { testJob } from '../cuts/support/testJob.ts';
import { flatBreakage } from '../support/flatBreakage.ts';
import { judgePlan } from './support/judgePlan.ts';
import { rulesOf } from './support/rulesOf.ts';

const gap = inch(1 / 4);
const plain = { gap, tile: { length: inch(12), width: inch(12) }, joint: inch(1 / 8) };

function planOf(floor: Floor, tile: Partial<TileSpec> = {}, given: Partial<Job> = {}) {
  const job = testJob(given, { length: floor.tile.length, width: floor.tile.width, ...tile });
  const layout = layFloor(floor);
  const cuts = makeCuts(job, layout);
  const plan = makeTilePlans(job, [layout], [cuts]).field!;
  expect(judgePlan(layout, cuts, plan, rulesOf(job))).toEqual([]);
  return plan;
}

/** A strip of floor, one tile deep, that ends with a cut of `low` and one of `high` and has `whole` tiles between. */
const strip = (low: number, high: number, whole: number): Floor => ({
  ...plain,
  outline: rectangle(2 * gap + low + high + whole * inch(12) + (whole + 1) * plain.joint, 2 * gap + inch(12)),
  origin: [gap + low + plain.joint, gap],
});

describe('how many tiles', () => {
  test('126 × 98 in of 11 7/8 × 23 7/8 in: 55 pieces and no offcut serves again; a tenth on the area would buy 48 (arithmetic)', () => {
    const [end, side] = [inch(8 + 11 / 16), inch(12 + 11 / 16)];
    const plan = planOf({
      outline: rectangle(inch(126), inch(98)),
      gap,
      tile: { length: inch(11.875), width: inch(23.875) },
      joint: inch(1 / 8),
      origin: [gap + end + inch(1 / 8), gap + side + inch(1 / 8)],
    });
    expect(plan).toMatchObject({ whole: 27, cut: 28, needed: 55, bound: 55 });
    expect(Math.ceil((1.1 * 126 * 98) / (12 * 24))).toBe(48);
  });

  test('5 × 8 ft bath of 12 in tile: 21 whole, 14 side rips, 6 end rips in 3 tiles, 4 corners in 2: 40 tiles (arithmetic)', () => {
    const plan = planOf({
      ...plain,
      outline: rectangle(inch(60), inch(96)),
      origin: [gap + inch(11.5) + plain.joint, gap + inch(5.25) + plain.joint],
    });
    expect(plan).toMatchObject({ whole: 21, cut: 24 });
    expect(plan.needed).toBe(40);
  });

  test('a tile with a direction saves none of them', () => {
    const floor: Floor = {
      ...plain,
      outline: rectangle(inch(60), inch(96)),
      origin: [gap + inch(11.5) + plain.joint, gap + inch(5.25) + plain.joint],
    };
    expect(planOf(floor, { turns: 'none' }).needed).toBeLessThanOrEqual(45);
  });
});

describe('offcuts are used again where factory edge and kerf allow', () => {
  const half = (inch(12) - mm(2)) / 2;

  test('two cuts of half a tile less half the kerf come out of one tile (common practice)', () => {
    expect(planOf(strip(half, half, 3))).toMatchObject({ cut: 2, needed: 4, bound: 4 });
  });

  test('a tick more and each takes its own', () => {
    expect(planOf(strip(half + 1, half, 3))).toMatchObject({ cut: 2, needed: 5 });
  });

  test('a 16 in tile with a 0.09 in kerf gives two halves of 7.955 (common practice)', () => {
    const wide: Floor = {
      ...plain,
      tile: { length: inch(16), width: inch(16) },
      outline: rectangle(2 * gap + 2 * inch(7.955) + plain.joint, 2 * gap + inch(16)),
      origin: [gap + inch(7.955) + plain.joint, gap],
    };
    expect(planOf(wide, {}, { saw: { kerf: inch(0.09) } }).needed).toBe(1);
    expect(planOf(wide, {}, { saw: { kerf: inch(0.1) } }).needed).toBe(2);
  });

  test('both ends of a row share a tile that may not be turned: one keeps its left edge, one its right', () => {
    expect(planOf(strip(inch(5), inch(6), 3), { turns: 'none' }).needed).toBe(4);
  });

  test('but two cuts with the same factory edge need the tile to be turned', () => {
    const corridor: Floor = {
      ...plain,
      outline: rectangle(inch(5) + 2 * gap, inch(24) + plain.joint + 2 * gap),
      origin: [gap, gap],
    };
    expect(planOf(corridor, { turns: 'half' }).needed).toBe(1);
    expect(planOf(corridor, { turns: 'none' }).needed).toBe(2);
  });

  test('a piece with a hole takes a tile for itself', () => {
    const floor: Floor = {
      ...strip(inch(4), inch(4), 1),
      circles: [
        { name: 'pipe', centre: [gap + inch(4) + plain.joint + inch(6), gap + inch(6)], radius: inch(1) },
      ],
    };
    expect(planOf(floor)).toMatchObject({ whole: 0, cut: 3, needed: 2, spare: 1 });
  });
});

describe('what to buy', () => {
  const floor: Floor = {
    ...plain,
    outline: rectangle(inch(60), inch(96)),
    origin: [gap + inch(11.5) + plain.joint, gap + inch(5.25) + plain.joint],
  };

  test('breakage on the cuts, keepers on all pieces, less what is on hand, in whole boxes (common practice)', () => {
    const plan = planOf(
      floor,
      { onHand: 5, box: { pieces: 11, price: 41.5 } },
      { waste: { breakage: flatBreakage(0.03), keep: 0.02 } },
    );
    expect(plan).toMatchObject({
      needed: 40,
      breakage: 1,
      spare: 0,
      keep: 1,
      buy: 37,
      boxes: 4,
      over: 7,
      price: 166,
    });
  });

  test('enough on hand buys nothing', () => {
    expect(planOf(floor, { onHand: 60 }).buy).toBe(0);
  });

  test('a share that is a whole number of tiles stays one', () => {
    expect(planOf(floor, {}, { waste: { breakage: flatBreakage(0.125), keep: 0.2 } })).toMatchObject({
      breakage: 3,
      keep: 9,
    });
  });
});

describe('every plan can be sawn', () => {
  const size = (least: number, most: number) =>
    fc.integer({ min: least * 64, max: most * 64 }).map((n) => n * 127);
  const nudge = fc.integer({ min: -4064, max: 4064 });
  const rooms = fc.record({
    width: size(40, 100),
    height: size(40, 80),
    nudges: fc.array(fc.tuple(nudge, nudge), { minLength: 4, maxLength: 4 }),
    tile: fc.constantFrom([11.8125, 11.8125], [11.875, 23.875], [23.75, 5.9]),
    start: fc.tuple(size(0, 24), size(0, 24)),
    shift: fc.constantFrom(0, 4.1),
    turns: fc.constantFrom('any' as const, 'half' as const, 'none' as const),
    kerf: fc.constantFrom(mm(1.6), mm(2), mm(3)),
  });

  test('on random rooms: inside its tile, the kerf between, each piece served once, no bound over the plan', () => {
    fc.assert(
      fc.property(rooms, ({ width, height, nudges, tile, start, shift, turns, kerf }) => {
        const corners: Point[] = [
          [0, 0],
          [width, 0],
          [width, height],
          [0, height],
        ];
        const outline = corners.map(([x, y], i): Point => [x + nudges[i]![0], y + nudges[i]![1]]);
        const plan = planOf(
          {
            ...plain,
            outline,
            tile: { length: inch(tile[0]!), width: inch(tile[1]!) },
            origin: start,
            shift: inch(shift),
          },
          { turns },
          { saw: { kerf } },
        );
        expect(plan.needed).toBeLessThanOrEqual(plan.whole + plan.cut);
      }),
      { seed: 20270308, numRuns: process.env.LONG === '1' ? 2000 : 30 },
    );
  });
});
