import { describe, expect, test } from 'vitest';
import type { Material } from '../../src/materials/Material.ts';
import { makeMaterials } from '../../src/materials/makeMaterials.ts';
import type { TilePlan } from '../../src/tiles/TilePlan.ts';
import { groutVolume, inches, millimetres } from '../../src/trade/index.ts';
import { fieldLayout, JOB, LB_IN_KG, squareFeet, withFloor, withTile } from './plainJob.ts';

const find = (materials: readonly Material[], what: string) => materials.find((one) => one.what === what);
const figures = (material: Material | undefined, code: string) =>
  material?.sum.find((step) => step.code === code)?.figures;

describe('mortar: bag rate and notch are both summed and the larger is bought', () => {
  const half = { kind: 'square', width: inches(1 / 2), depth: inches(1 / 2), space: inches(1 / 2) } as const;
  const buy = (notch: typeof half | undefined, backButter: boolean) => {
    const mortar = { ...JOB.products.mortar, notch: notch ?? JOB.products.mortar.notch, backButter };
    const job = { ...JOB, products: { ...JOB.products, mortar } };
    return find(makeMaterials(job, [squareFeet(200)], {}), 'mortar');
  };

  test('200 sq ft, 1/2 in notch, back-buttered: 6.1 bags by the rate, 7 to buy (common practice, no source)', () => {
    const mortar = buy(half, true);
    expect(figures(mortar, 'material.mortar.sum.bagRateButtered')?.bagCount).toBe(6.11);
    expect(mortar?.buy).toBe(7);
  });

  test('the notch is shown beside it: its bed is 1/4 in upright, 0.707 of that at 45° (geometry)', () => {
    const step = figures(buy(half, true), 'material.mortar.sum.squareNotch');
    expect(Number(step?.bed)).toBeCloseTo(inches(1 / 4) * Math.SQRT1_2, 0);
  });

  test('200 sq ft, 1/4 × 3/8 in notch: 3.38 bags by the rate, more by the notch (common practice, no source)', () => {
    const mortar = buy(undefined, false);
    expect(figures(mortar, 'material.mortar.sum.bagRate')?.bagCount).toBe(3.38);
    expect(mortar?.sum.map(({ code }) => code)).toContain('material.mortar.sum.notchRules');
    expect(mortar?.amount).toBeGreaterThan(3.38 * 50 * LB_IN_KG);
  });

  test("the bag's own coverage counts at its low end and is marked as the job's", () => {
    const mortar = { ...JOB.products.mortar, coversM2: [2, 3] as const, stated: ['coversM2'] };
    const line = find(
      makeMaterials({ ...JOB, products: { ...JOB.products, mortar } }, [squareFeet(200)], {}),
      'mortar',
    );
    expect(figures(line, 'material.mortar.sum.bagRate')?.coverM2).toBe(2);
    expect(line).toMatchObject({ mark: 'job', source: 'job', buy: Math.ceil((18.580608 * 1.1) / 2) });
  });
});

describe('grout: the exact volume of the joints, as deep as the tile', () => {
  const rate = (length: number, width: number, joint: number, depth: number) =>
    groutVolume({ length, width, joint, depth }) * 1.6;
  const mm = millimetres;
  test.each([
    ['300 × 300 × 8 mm, 2 mm', rate(mm(300), mm(300), mm(2), mm(8)), 0.17],
    ['50 × 50 mm, 2 mm, 8 mm deep', rate(mm(50), mm(50), mm(2), mm(8)), 0.97],
    ['50 × 50 mm, 2 mm, 4 mm deep', rate(mm(50), mm(50), mm(2), mm(4)), 0.48],
    ['12 × 12 × 3/8 in, 3/8 in', rate(inches(12), inches(12), inches(3 / 8), inches(3 / 8)), 0.91],
  ])('%s in kg/m² at 1.6 kg a litre (geometry; common practice, no source)', (_what, found, expected) => {
    expect(found).toBeCloseTo(expected, 2);
  });

  const massKg = (area: number, size: [number, number], depth: number, joint: number) => {
    const job = withTile({ length: inches(size[0]), width: inches(size[1]), thickness: inches(depth) });
    const grout = find(makeMaterials(job, [squareFeet(area, inches(joint))], {}), 'grout');
    return { bare: Number(figures(grout, 'material.grout.sum.mass')?.groutLitres) * 1.6, buy: grout?.buy };
  };
  test.each([
    [200, [12, 24], 3 / 8, 1 / 8, 4.4],
    [200, [12, 24], 3 / 8, 3 / 16, 6.5],
    [60, [3, 6], 5 / 16, 1 / 16, 2.2],
    [60, [3, 6], 5 / 16, 1 / 8, 4.2],
  ] as const)('%d sq ft of %j in (common practice, no source)', (area, size, depth, joint, expected) => {
    expect(massKg(area, [...size], depth, joint).bare).toBeCloseTo(expected, 1);
  });

  test('120 sq ft of 12 × 12 × 3/8 with 3/8 joints: 22.4 lb, one bag of 25 lb (common practice, no source)', () => {
    const { bare, buy } = massKg(120, [12, 12], 3 / 8, 3 / 8);
    expect(bare / LB_IN_KG).toBeCloseTo(22.4, 1);
    expect(buy).toBe(1);
  });

  test('one batch, and which grade for the joint: TCNA FAQ', () => {
    const grout = find(makeMaterials(JOB, [squareFeet(50)], {}), 'grout');
    expect(grout?.sum.slice(-2).map(({ code }) => code)).toEqual([
      'material.grout.sum.sanded',
      'material.grout.sum.oneBatch',
    ]);
  });
});

describe('sealant, backer and sealer', () => {
  const materials = makeMaterials(JOB, [fieldLayout(inches(100), inches(60), JOB.joint)], {});

  test('the gap once round, half as deep as it is wide: TCNA Handbook', () => {
    const litres = (320 * 25.4 * (25.4 / 4) * (25.4 / 8)) / 1e6;
    expect(figures(find(materials, 'sealant'), 'material.sealant.sum.edge')?.sealantLitres).toBeCloseTo(
      litres,
      9,
    );
    expect(find(materials, 'backer')?.amount).toBeCloseTo(0.0254 * 320, 2);
  });

  test('a floor longer than a bay adds a movement joint across it', () => {
    const long = makeMaterials(JOB, [fieldLayout(inches(12 * 26), inches(60), JOB.joint)], {});
    expect(figures(find(long, 'sealant'), 'material.sealant.sum.movement')?.runMetres).toBeCloseTo(1.524, 3);
  });

  test('a tucked edge and the flange stay open', () => {
    const layout = fieldLayout(inches(100), inches(60), JOB.joint);
    const edges = layout.frame.edges.map((edge) => ({ ...edge, meets: 'casing' as const }));
    const open = makeMaterials(JOB, [{ ...layout, frame: { ...layout.frame, edges } }], {});
    expect(find(open, 'sealant')).toBeUndefined();
  });

  test('backer by whole feet where the job is told in inches, else by whole metres', () => {
    const bought = (system: 'inches' | 'mm') => {
      const job = { ...JOB, print: { ...JOB.print, system } };
      return find(makeMaterials(job, [squareFeet(200)], {}), 'backer')!;
    };
    const [feet, metres] = [bought('inches'), bought('mm')];
    expect(feet.buy / 0.3048).toBeCloseTo(Math.ceil(feet.amount / 0.3048), 2);
    expect(metres.buy).toBe(Math.ceil(metres.amount));
  });

  test('sealer by area; none for epoxy grout with glazed tile', () => {
    expect(find(materials, 'sealer')?.buy).toBe(1);
    const grout = { ...JOB.products.grout, kind: 'epoxy' as const };
    const epoxy = makeMaterials({ ...JOB, products: { ...JOB.products, grout } }, [squareFeet(50)], {});
    expect(find(epoxy, 'sealer')).toBeUndefined();
  });
});

describe('tile', () => {
  const plan: TilePlan = {
    tile: 'field',
    whole: 27,
    cut: 28,
    needed: 55,
    bound: 55,
    from: [],
    breakage: 1,
    spare: 2,
    keep: 2,
    onHand: 0,
    buy: 60,
    boxes: 6,
    over: 6,
  };

  test('comes from the plan, in whole boxes of one lot', () => {
    const job = withTile({ box: { pieces: 11 } });
    expect(find(makeMaterials(job, [squareFeet(50)], { field: plan }), 'tile')).toMatchObject({
      amount: 60,
      buy: 6,
      buyUnit: 'box',
    });
  });

  test('without a layout there is nothing to count', () => {
    expect(makeMaterials(withFloor({ name: 'other' }), [squareFeet(50)], {})).toEqual([]);
  });
});
