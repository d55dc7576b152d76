import { describe, expect, test } from 'vitest';
import { TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_MM } from '../../src/measure/index.ts';
import * as trade from '../../src/trade/index.ts';
import { inches, millimetres } from '../../src/trade/index.ts';

const SQ_FT_IN_M2 = 0.09290304; // NIST Handbook 44, Appendix C
const LB_IN_KG = 0.45359237; // NIST Handbook 44, Appendix C
const ft = (value: number) => value * TICKS_PER_FOOT;
const inIn = (ticks: number) => ticks / TICKS_PER_INCH;
const inMm = (ticks: number) => ticks / TICKS_PER_MM;

/** Each row: what is checked and where its value is printed, the value found, the value printed. */
type Row = readonly [what: string, found: unknown, printed: unknown];

function check(rows: readonly Row[], digits?: number) {
  test.each(rows.map(([what, found, printed]) => ({ what, found, printed })))(
    '$what',
    ({ found, printed }) => {
      if (digits !== undefined) expect(found as number).toBeCloseTo(printed as number, digits);
      else expect(found).toEqual(printed);
    },
  );
}

describe('tile sizes', () => {
  const [low, high] = trade.nominalRange(inches(12));
  check(
    [
      ['nominal 12 in, low: ANSI A137.1', inIn(low), 11.64],
      ['nominal 12 in, high: ANSI A137.1', inIn(high), 12.36],
      ['rectified 8 in: ANSI A137.1', inIn(trade.rectifiedTolerance(inches(8))), 0.02],
      ['rectified 24 in: ANSI A137.1', inIn(trade.rectifiedTolerance(inches(24))), 0.03],
      ['warpage, rectified 8 in: ANSI A137.1', inIn(trade.edgeWarpage(inches(8), 'rectified')), 0.032],
      ['warpage, rectified 24 in: ANSI A137.1', inIn(trade.edgeWarpage(inches(24), 'rectified')), 0.05],
      ['warpage, calibrated 24 in: ANSI A137.1', inIn(trade.edgeWarpage(inches(24), 'calibrated')), 0.08],
      [
        'work size 600 mm: EN 14411 Annex G',
        inMm(trade.workSizeTolerance(millimetres(600), 'calibrated')),
        2,
      ],
      [
        'work size 300 mm rectified: EN 14411 Annex G',
        inMm(trade.workSizeTolerance(millimetres(300), 'rectified')),
        0.9,
      ],
      [
        'ten tiles and nine joints, common practice',
        inIn(trade.checkRun(inches(11.8125), inches(3 / 16))),
        119.8125,
      ],
    ],
    3,
  );
});

describe('joints', () => {
  const running = trade.runningJointMinimum;
  check([
    ['spread 1/16 in: ANSI A108.02 §4.3.8', trade.jointMinimum(inches(1 / 16)), inches(3 / 16)],
    ['spread 1/64 in: ANSI A108.02 §4.3.8', trade.jointMinimum(inches(1 / 64)), inches(1 / 16)],
    ['spread 0.9 mm: ANSI A108.02 §4.3.8', inMm(trade.jointMinimum(millimetres(0.9))), 2.7],
    ['spread 0.4 mm: ANSI A108.02 §4.3.8', inMm(trade.jointMinimum(millimetres(0.4))), 1.5875],
    [
      'rectified, bow 1/32 in: ANSI A108.02 §4.3.8.1',
      running(inches(24), 'rectified', inches(1 / 32)),
      inches(5 / 32),
    ],
    [
      'calibrated, bow 1/32 in: ANSI A108.02 §4.3.8.1',
      running(inches(24), 'calibrated', inches(1 / 32)),
      inches(7 / 32),
    ],
    [
      'a side of exactly 15 in has no rule: ANSI A108.02 §4.3.8.1',
      running(inches(15), 'calibrated', 0),
      undefined,
    ],
    ['12 × 24 at 50 %: ANSI A108.02 §4.3.8.2', trade.offsetAllowed(inches(24), 1, 2), false],
    ['6 × 12 at 50 %: ANSI A108.02 §4.3.8.2', trade.offsetAllowed(inches(12), 1, 2), true],
    ['16 × 16 at 50 %: ANSI A108.02 §4.3.8.2', trade.offsetAllowed(inches(16), 1, 2), false],
    ['15 × 15 at 50 %: ANSI A108.02 §4.3.8.2', trade.offsetAllowed(inches(15), 1, 2), true],
    ['16 × 16 by the older text, over 18 in', trade.offsetAllowed(inches(16), 1, 2, inches(18)), true],
    ['third offset of a long tile: ANSI A108.02 §4.3.8.2', trade.offsetAllowed(inches(24), 1, 3), true],
    [
      'joint 1/8, warp 1/32: ANSI A108.02 §4.3.7',
      trade.lippageLimit(inches(1 / 8), inches(1 / 32)),
      inches(1 / 16),
    ],
    [
      'joint 1/4, warp 1/32: ANSI A108.02 §4.3.7',
      trade.lippageLimit(inches(1 / 4), inches(1 / 32)),
      inches(3 / 32),
    ],
    ['joint 6 mm: NHBC Standards 9.1.7 (2025)', inMm(trade.lippageLimitUk(millimetres(6))), 1],
    ['joint 8 mm: NHBC Standards 9.1.7 (2025)', inMm(trade.lippageLimitUk(millimetres(8))), 2],
  ]);
});

describe('base and bed', () => {
  const square = (width: number, depth: number, space: number) =>
    trade.bedDepth({ kind: 'square', width: inches(width), depth: inches(depth), space: inches(space) });
  const ten = millimetres(10);
  check([
    ['14.99 in: ANSI A108.01', trade.flatnessClass(inches(14.99)).name, 'ordinary'],
    ['15 in: ANSI A108.01', trade.flatnessClass(inches(15)).name, 'tight'],
    ['ordinary over 10 ft: ANSI A108.01', trade.flatnessGap(inches(12), ft(10)), inches(1 / 4)],
    ['ordinary over 12 in: ANSI A108.01', trade.flatnessGap(inches(12), ft(1)), inches(1 / 16)],
    ['tight over 10 ft: ANSI A108.01', trade.flatnessGap(inches(24), ft(10)), inches(1 / 8)],
    ['tight over 24 in: ANSI A108.01', trade.flatnessGap(inches(24), ft(2)), inches(1 / 16)],
    // The millimetres that the standard prints beside its inches, as reported in public; the paid text was not read.
    [
      'ordinary over 3 m: ANSI A108.01',
      inMm(trade.flatnessGap(millimetres(300), millimetres(3000), 'mm')),
      6,
    ],
    ['tight over 3 m: ANSI A108.01', inMm(trade.flatnessGap(millimetres(600), millimetres(3000), 'mm')), 3],
    [
      'tight over 610 mm, 1/16 in as in 24 in: ANSI A108.01',
      inMm(trade.flatnessGap(millimetres(600), millimetres(610), 'mm')),
      1.6,
    ],
    ['38 cm: ANSI A108.01', trade.flatnessClass(millimetres(380), 'mm').name, 'tight'],
    ['1/4 × 1/4 × 1/4, geometry', inIn(square(1 / 4, 1 / 4, 1 / 4)), 1 / 8],
    ['1/4 × 3/8 × 1/4, geometry', inIn(square(1 / 4, 3 / 8, 1 / 4)), 3 / 16],
    ['1/2 × 1/2 × 1/2, geometry', inIn(square(1 / 2, 1 / 2, 1 / 2)), 1 / 4],
    [
      '10 × 10 × 10 mm leaves 5 L/m², geometry',
      inMm(trade.bedDepth({ kind: 'square', width: ten, depth: ten, space: ten })),
      5,
    ],
    [
      '1/4 in notches on 1/2 in centres, bed not under 1/8: UFGS 09 33 00 §3.2.1',
      square(1 / 4, 1 / 4, 1 / 4) >= inches(1 / 8),
      true,
    ],
    ['12 in tile to a point drain: TCNA Handbook', trade.followsCone(inches(12)), false],
  ]);
  check(
    [
      ['contact of 12 × 12 in, dry: ANSI A108.5', 144 * trade.contactShare('dry'), 115.2],
      ['contact of 12 × 12 in, wet: ANSI A108.5', 144 * trade.contactShare('wet'), 136.8],
      ['fall over 32 in: plumbing codes', inIn(trade.fall(inches(32))), 0.667],
      [
        'V notch of 1/4 in, geometry',
        inIn(trade.bedDepth({ kind: 'v', width: 2032, depth: 2032, space: 0 })),
        1 / 8,
      ],
      [
        'trowel at 30° leaves half, geometry',
        inIn(trade.bedDepth({ kind: 'square', width: 2032, depth: 2032, space: 2032 }, 30)),
        1 / 16,
      ],
    ],
    3,
  );
});

describe('movement joints', () => {
  const [dry, wet] = [trade.bayLimit('dry'), trade.bayLimit('wet')];
  const bays = (feet: number, limit: number) => {
    const found = trade.movementBays(ft(feet), limit);
    return [found.bays, found.each / TICKS_PER_FOOT];
  };
  const m = (value: number) => millimetres(1000 * value);
  check([
    ['25 ft inside: TCNA EJ171', bays(25, dry), [1, 25]],
    ['26 ft inside: TCNA EJ171', bays(26, dry), [2, 13]],
    ['dry in metres: TCNA EJ171, from memory', inMm(trade.bayLimit('dry', false, 'mm')), 7600],
    ['42 ft inside: TCNA EJ171', bays(42, dry), [2, 21]],
    ['30 ft exposed: TCNA EJ171', bays(30, wet), [3, 10]],
    ['42 ft exposed: TCNA EJ171', bays(42, wet), [4, 10.5]],
    ['corner with 1/16 in grout: ANSI A108.02 §4.4', trade.cornerJoint(inches(1 / 16)), inches(1 / 8)],
    ['8 ft apart, swing of 130 °F: EJ171', trade.exteriorJointWidth(ft(8), 130), inches(1 / 2)],
    ['8 ft apart: EJ171', trade.exteriorJointWidth(ft(8)), inches(3 / 8)],
    ['12 ft apart: EJ171', trade.exteriorJointWidth(ft(12)), inches(1 / 2)],
    ['sealant 1/4 in wide: TCNA Handbook', trade.sealantDepth(inches(1 / 4)), inches(1 / 8)],
    ['14 × 9 m: BS 5385-3', trade.movementBaysUk(m(14), m(9), false), [2, 1]],
    ['heated 9 × 6 m: BS 5385-3', trade.movementBaysUk(m(9), m(6), true), [2, 1]],
  ]);
});

describe('setting out', () => {
  const run = (wall: number) => {
    const { full, ends } = trade.balancedRun(inches(wall), inches(11.8125), inches(3 / 16), inches(1 / 4));
    return [full, inIn(ends[0])];
  };
  check([
    ['wall 95, tile 6: NAVEDTRA 14044 p. 7-23', inIn(trade.balanceWithoutJoints(inches(95), inches(6))), 5.5],
    [
      'wall 60, tile 4 1/4: NAVEDTRA 14044 p. 7-23',
      inIn(trade.balanceWithoutJoints(inches(60), inches(4.25))),
      2.375,
    ],
    ['wall 124 with joints and gaps, geometry', run(124), [9, 7 + 21 / 32]],
    ['wall 120 3/8 with joints and gaps, geometry', run(120.375), [9, 5 + 27 / 32]],
    [
      '3-4-5 in 900 × 1200 mm, common practice',
      trade.threeFourFive(millimetres(900), millimetres(1200), millimetres(100))?.diagonal,
      millimetres(1500),
    ],
    [
      '3-4-5 that does not fit',
      trade.threeFourFive(millimetres(200), millimetres(1200), millimetres(100)),
      undefined,
    ],
  ]);
});

describe('mortar and grout', () => {
  const cubicInches = (sizes: readonly [number, number], joint: number, depth: number) =>
    (trade.groutVolume({
      length: inches(sizes[0]),
      width: inches(sizes[1]),
      joint: inches(joint),
      depth: inches(depth),
    }) /
      25.4) *
    144;
  const litres = (side: number, joint: number, depth: number) =>
    trade.groutVolume({
      length: millimetres(side),
      width: millimetres(side),
      joint: millimetres(joint),
      depth: millimetres(depth),
    });
  check(
    [
      ['12 × 12, 1/8, 3/8 deep, cu in per sq ft, geometry', cubicInches([12, 12], 1 / 8, 3 / 8), 1.1077],
      ['12 × 24, 1/8, geometry', cubicInches([12, 24], 1 / 8, 3 / 8), 0.8336],
      ['6 × 24, 3/16, geometry', cubicInches([6, 24], 3 / 16, 3 / 8), 2.0423],
      ['3 × 6, 1/16, 5/16 deep, geometry', cubicInches([3, 6], 1 / 16, 5 / 16), 1.3728],
      ['2 × 2, 1/8, 1/4 deep, geometry', cubicInches([2, 2], 1 / 8, 1 / 4), 4.1107],
      ['300 mm, 3, 9, L/m², geometry', litres(300, 3, 9), 0.1773],
      ['600 mm, 3, 10, geometry', litres(600, 3, 10), 0.0993],
      ['100 mm, 3, 8, geometry', litres(100, 3, 8), 0.4592],
      ['48 mm, 2, 6, geometry', litres(48, 2, 6), 0.4704],
    ],
    4,
  );
  check([
    [
      '300 mm, 3, 9 in kg/m², common practice',
      (litres(300, 3, 9) * trade.GROUT_DENSITY.value).toFixed(3),
      '0.284',
    ],
    ['joint 1/16: TCNA FAQ', trade.groutGrade(inches(1 / 16)), 'unsanded'],
    ['joint 1/8: TCNA FAQ', trade.groutGrade(inches(1 / 8)), 'sanded'],
    ['joint 1/2: TCNA FAQ', trade.groutGrade(inches(1 / 2)), 'coarse'],
    ['200 sq ft at 65, common practice, no source', (200 / 65).toFixed(2), '3.08'],
    [
      'a batch at 15 sq ft an hour, common practice, no source',
      Math.round(trade.batchMass(15 * SQ_FT_IN_M2, 1.5, (0.77 * LB_IN_KG) / SQ_FT_IN_M2) / LB_IN_KG),
      17,
    ],
  ]);
});

describe('waiting, thresholds, care', () => {
  check([
    [
      '3/8 in between floors: ADA Standards §303',
      trade.threshold(inches(3 / 8)),
      { kind: 'bevel', rise: inches(1 / 8), run: inches(1 / 4) },
    ],
    ['5/8 in between floors: ADA Standards §303', trade.threshold(inches(5 / 8)).kind, 'ramp'],
    ['1/4 in between floors: ADA Standards §303', trade.threshold(inches(1 / 4)).kind, 'upright'],
    [
      'undercut, common practice, no source',
      inIn(trade.undercut([1 / 2, 1 / 8, 3 / 8, 1 / 8].map(inches))),
      1 + 3 / 16,
    ],
    ['18 °F below 70 °F doubles a wait, common practice, no source', trade.temperatureFactor(11), 2],
    ['below 50 °F nothing is set, common practice, no source', trade.warmEnough(((49 - 32) * 5) / 9), false],
    [
      'glazed tile, cement grout, common practice, no source',
      trade.sealingNeed('ceramic', true, 'cement'),
      { grout: true, tile: false, beforeGrouting: false },
    ],
    [
      'glazed tile, epoxy grout, common practice, no source',
      trade.sealingNeed('ceramic', true, 'epoxy').grout,
      false,
    ],
    [
      'unglazed ceramic, common practice, no source',
      trade.sealingNeed('ceramic', false, 'cement'),
      { grout: true, tile: true, beforeGrouting: true },
    ],
    ['stone, common practice, no source', trade.sealingNeed('stone', false, 'cement').tile, true],
    ['drop test in a shower, common practice, no source', trade.dropTestMonths(true), 12],
    ['vinyl of 1980: 29 CFR 1926.1101', trade.asbestosLayers(1980, ['sheet vinyl']), ['sheet vinyl']],
    ['vinyl of 1981: 29 CFR 1926.1101', trade.asbestosLayers(1981, ['sheet vinyl']), []],
    [
      'vinyl of unknown age: 29 CFR 1926.1101',
      trade.asbestosLayers(undefined, ['vinilo en rollo']),
      ['vinilo en rollo'],
    ],
    ['painted wood of 1977, from memory', trade.mayHoldLead(1977), true],
  ]);
});

describe('facts', () => {
  const facts = Object.entries(trade).filter(([name]) => /^[A-Z_]+$/.test(name));
  test('there are many', () => expect(facts.length).toBeGreaterThan(30));
  test.each(facts)('%s carries a mark and a source', (_name, fact) => {
    const { mark, source } = fact as unknown as trade.Fact<unknown>;
    expect('SHGPM').toContain(mark);
    expect(source.length).toBeGreaterThan(2);
    expect(source === 'practice').toBe(mark === 'P');
  });
});
