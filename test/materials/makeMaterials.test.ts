import { describe, expect, test } from 'vitest';
import type { Job, Layer } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { floorFlatness } from '../../src/materials/floorFlatness.ts';
import type { Material } from '../../src/materials/Material.ts';
import { makeMaterials } from '../../src/materials/makeMaterials.ts';
import type { TilePlan } from '../../src/tiles/TilePlan.ts';
import { groutVolume, inches, millimetres } from '../../src/trade/index.ts';
import { zoneMortar } from '../../src/zones/zoneMortar.ts';
import {
  FLOOR,
  fieldLayout,
  JOB,
  LB_IN_KG,
  SQ_FT_IN_M2,
  squareFeet,
  withFloor,
  withTile,
} from './plainJob.ts';

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

  // By hand: 1/4 in at sin 45° is 4.490 mm; at 1.6 kg/L and back-buttered, of which 80 % lies on the floor, 8.980 kg/m²; on 18.581 m² and a tenth more 183.5 kg, 8.09 bags.
  test('200 sq ft, 1/2 in notch, back-buttered: 6.11 bags by the rate, 8.09 by the notch, 9 to buy (common practice, no source)', () => {
    const mortar = buy(half, true);
    expect(figures(mortar, 'material.mortar.sum.bagRateButtered')?.bagCount).toBe(6.11);
    expect(figures(mortar, 'material.mortar.sum.squareNotchButtered')?.bagCount).toBe(8.09);
    expect(mortar?.buy).toBe(9);
  });

  test('the notch is shown beside it: its bed is 1/4 in upright, 0.707 of that at 45° (geometry)', () => {
    const step = figures(buy(half, false), 'material.mortar.sum.squareNotch');
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

describe('mortar for a bed deeper than the trowel leaves at 45°: what the heights count with is bought', () => {
  const { mortar } = JOB.products;
  const counts = (inch: number) => ({
    ...JOB,
    products: { ...JOB.products, mortar: { ...mortar, stated: ['notch'] } },
    base: {
      ...JOB.base,
      fresh: [
        { name: 'mortar under tile', thickness: inches(inch) },
        { name: 'tile', thickness: inches(3 / 8) },
      ],
    },
  });
  const bought = (inch: number) => find(makeMaterials(counts(inch), [squareFeet(200)], {}), 'mortar')!;

  // By hand: 1/4 in are 6.35 mm; at 1.6 kg/L (from memory) 10.16 kg/m²; on 18.5806 m² 188.78 kg, and a tenth more 207.66 kg: 9.16 bags of 22.68 kg.
  test('1/4 in where the notch leaves 0.133 in: 207.7 kg, 10 bags', () => {
    expect(bought(1 / 4).amount).toBeCloseTo(207.66, 1);
    expect(bought(1 / 4).buy).toBe(10);
    expect(figures(bought(1 / 4), 'material.mortar.sum.ordered')).toMatchObject({ mortarKgPerM2: 10.16 });
  });

  test('the zones mix it by the same rate: 188.8 kg', () => {
    expect(zoneMortar(counts(1 / 4), 18.580608).mortarKg).toBeCloseTo(188.78, 1);
  });

  test('a thinner bed than the notch leaves takes what the notch leaves', () => {
    expect(bought(1 / 16).amount).toBe(find(makeMaterials(JOB, [squareFeet(200)], {}), 'mortar')!.amount);
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

  test('two bays of 5 × 5 tiles, 12 × 12 × 3/8 in, a soft joint of 3/8 in between: the joints of 50 tiles less one joint through (geometry)', () => {
    const [joint, module] = [inches(1 / 8), inches(12 + 1 / 8)];
    const job = withTile({ length: inches(12), width: inches(12), thickness: inches(3 / 8) });
    const field = fieldLayout(10 * module + inches(1 / 4), 5 * module, joint);
    const lines = [
      { axis: 'along', at: 5 * module + inches(1 / 8), width: inches(3 / 8), length: 5 * module },
    ];
    const layout = { ...field, movement: { lines, laid: true, missing: [], limit: 0 } } as unknown as Layout;
    const grout = find(makeMaterials({ ...job, joint }, [layout], {}), 'grout');
    const cubicInches = (50 * (12.125 ** 2 - 12 ** 2) - 5 * 12.125 * (1 / 8)) * (3 / 8);
    expect(figures(grout, 'material.grout.sum.mass')?.groutLitres).toBeCloseTo(cubicInches * 0.016387064, 6);
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

  test('a tile joint over a joint of the base is counted; where that is still asked, what it would add is told', () => {
    const field = [fieldLayout(inches(100), inches(60), JOB.joint)];
    const run = { surface: 'floor', width: inches(1 / 4), length: inches(60) };
    const over = makeMaterials(JOB, field, {}, [{ isOver: true, ...run }]);
    const asked = makeMaterials(JOB, field, {}, [{ isOver: false, ...run }]);
    const litres = (60 * 25.4 * (25.4 / 4) * (25.4 / 8)) / 1e6;
    const steps = ['carried', 'open'].map(
      (step, i) => figures(find([over, asked][i]!, 'sealant'), `material.sealant.sum.${step}`)?.sealantLitres,
    );
    expect(steps.map((one) => Number(one).toFixed(9))).toEqual([litres, litres].map((one) => one.toFixed(9)));
    const amounts = [materials, over, asked].map((all) => find(all, 'sealant')!.amount);
    expect(amounts[1]! - amounts[0]!).toBeCloseTo(litres * 1.1, 9);
    expect(amounts[2]).toBe(amounts[0]);
    expect(find(over, 'backer')!.amount - find(asked, 'backer')!.amount).toBeCloseTo(1.524, 2);
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

  // By hand: 1/4 in at 1 1/4 of the joint takes 5/16 in of backer, 7/16 in takes 35/64 in.
  test('where a strip is left out, sealant and backer are those of the wider gap there', () => {
    const layout = fieldLayout(inches(100), inches(60), JOB.joint);
    const [edge] = layout.frame.edges;
    const wide = [1 / 4, 7 / 16, 3 / 8].slice(1).map((gap) => ({ edge: edge!.id, gap: inches(gap) }));
    const left = wide.map((one) => ({ ...one, shape: layout.field[0]!, why: 'gapOnly' as const }));
    // Tile of 3/4 in leaves room for both.
    const deep = withTile({ thickness: inches(3 / 4) });
    const lines = makeMaterials(deep, [{ ...layout, left }], {});
    const backers = lines.filter(({ what }) => what === 'backer');
    const runs = backers.flatMap(({ sum }) => sum.filter(({ code }) => code === 'material.backer.sum.rod'));
    const rods = runs.map(({ figures }) => [figures.width, figures.diameter]);
    expect(rods).toEqual([
      [inches(1 / 4), inches(5 / 16)],
      [inches(7 / 16), inches(35 / 64)],
    ]);
    const plain = makeMaterials(deep, [layout], {});
    expect(backers.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(
      find(plain, 'backer')!.amount,
      3,
    );
    expect(find(lines, 'sealant')!.amount).toBeGreaterThan(find(plain, 'sealant')!.amount);
  });

  test('an edge profile where tile ends free, by the length of its edge there; none where tile goes on', () => {
    const layout = fieldLayout(inches(100), inches(60), JOB.joint);
    const edges = layout.frame.edges.map((edge, i) =>
      i === 0 ? { ...edge, id: 'hall:line', meets: 'doorway' as const } : edge,
    );
    const framed = { ...layout, frame: { ...layout.frame, edges } };
    const long = Math.hypot(...[0, 1].map((i) => edges[0]!.to[i]! - edges[0]!.from[i]!)) - 2 * edges[0]!.gap;
    const profile = find(makeMaterials(JOB, [framed], {}), 'profile');
    expect(profile!.amount).toBeCloseTo(long / inches(1) / 39.3701, 2);
    expect(profile!.sum[0]!.figures.place).toBe('hall');
    const doorways = [{ name: 'hall', beyond: 'tile' }] as unknown as Job['surfaces'][number]['doorways'];
    const goesOn = { ...JOB, surfaces: [{ ...FLOOR, doorways }] };
    expect(find(makeMaterials(goesOn, [framed], {}), 'profile')).toBeUndefined();
    expect(find(makeMaterials(JOB, [layout], {}), 'profile')).toBeUndefined();
  });

  test('sealer by area; none for epoxy grout with glazed tile', () => {
    expect(find(materials, 'sealer')?.buy).toBe(1);
    const grout = { ...JOB.products.grout, kind: 'epoxy' as const };
    const epoxy = makeMaterials({ ...JOB, products: { ...JOB.products, grout } }, [squareFeet(50)], {});
    expect(find(epoxy, 'sealer')).toBeUndefined();
  });

  test('sealer twice where porous tile is sealed before grouting and all of it after, once where its grout is epoxy', () => {
    const sealer = (tile: Partial<Job['tiles'][number]>, kind: 'cement' | 'epoxy') => {
      const products = { ...JOB.products, grout: { ...JOB.products.grout, kind } };
      const tiles = JOB.tiles.map((one) => ({ ...one, ...tile }));
      return find(makeMaterials({ ...JOB, tiles, products }, [squareFeet(50)], {}), 'sealer')!;
    };
    const stone = { material: 'stone', glazed: false } as const;
    const once = sealer({}, 'cement').amount;
    expect(sealer(stone, 'cement').amount).toBeCloseTo(2 * once, 9);
    expect(sealer(stone, 'epoxy').amount).toBeCloseTo(once, 9);
    expect(sealer(stone, 'cement').sum[0]!.code).toBe('material.sealer.sum.twice');
  });
});

describe('what lies under the tile has a line for each layer that the job adds', () => {
  const layer = (name: string, thickness: number): Layer => ({ name, thickness: inches(thickness) });
  const under = (fresh: readonly Layer[]) =>
    makeMaterials({ ...JOB, base: { ...JOB.base, fresh } }, [squareFeet(100)], {}).filter(
      ({ what }) => what === 'layer',
    );
  const board = layer('board', 1 / 4);
  const bed = layer('mortar under tile', 1 / 8);
  const tile = layer('tile', 3 / 8);

  test('a board by its area and a tenth more, and its pieces by its own sheet (common practice, no source)', () => {
    const [line, ...rest] = under([board, bed, tile]);
    expect(rest).toEqual([]);
    expect(line).toMatchObject({ name: 'board', mark: 'P', unit: 'm2', buyUnit: 'm2' });
    expect(line!.amount).toBeCloseTo(100 * SQ_FT_IN_M2, 9);
    expect(line!.buy).toBeCloseTo(110 * SQ_FT_IN_M2, 9);
    expect(line!.sum.map(({ code }) => code)).toContain('material.layer.sum.read');
  });

  test('a board by the pack where the job says what one covers: 110 sq ft are 8 packs of 15 (arithmetic)', () => {
    const [line] = under([{ ...board, packM2: 15 * SQ_FT_IN_M2 }, bed, tile]);
    expect(line).toMatchObject({ buy: 8, buyUnit: 'pack' });
    expect(line!.sum.map(({ code }) => code)).not.toContain('material.layer.sum.noPack');
    expect(under([board, bed, tile])[0]!.sum.map(({ code }) => code)).toContain('material.layer.sum.noPack');
  });

  test('the mortar under a board by its thickness: 100 sq ft of 3/32 in are 22.12 L (geometry)', () => {
    const lines = under([layer('mortar', 3 / 32), board, bed, tile]);
    expect(lines.map(({ name }) => name)).toEqual(['mortar', 'board']);
    expect(Number(figures(lines[0], 'material.layer.sum.bed')?.bedLitres)).toBeCloseTo(22.123, 3);
  });

  // By hand, each step from what the one before prints: 5.84 gal × 13.35 lb/gal = 77.964, a tenth more of 78.0 is 85.8.
  test('the mortar under a board in the bags of the mortar: 78.0 lb and a tenth, 85.8 lb, are 2 of 50 lb', () => {
    const [line] = under([layer('mortar', 3 / 32), board, bed, tile]);
    expect(line!.amount / LB_IN_KG).toBeCloseTo(78, 9);
    expect(Number(figures(line, 'material.layer.sum.bags')?.massKg) / LB_IN_KG).toBeCloseTo(85.8, 9);
    expect(line).toMatchObject({ buy: 2, buyUnit: 'bag' });
  });

  // By hand: 1 1/4 in on 100 sq ft are 294.97 L, printed 77.9 gal, and a tenth more 85.7 gal, 324.41 L.
  test('what is floated or poured by its volume, under any name that the trade has for it, and how long it cures is asked', () => {
    for (const name of [
      'sloped mortar',
      'mud bed',
      'screed',
      'mortar',
      'mortero de pendiente',
      'contrapiso',
    ]) {
      const [line] = under([layer(name, 5 / 4), layer('membrane', 1 / 8), bed, tile]);
      expect(line).toMatchObject({ name, unit: 'litre', buyUnit: 'litre' });
      expect(line!.buy).toBeCloseTo(324.41, 1);
      expect(line!.sum.map(({ code }) => code)).toContain('material.layer.sum.castCures');
    }
    const [told] = under([{ ...layer('mud bed', 5 / 4), waitHours: 72 }, bed, tile]);
    expect(told!.sum.map(({ code }) => code)).not.toContain('material.layer.sum.castCures');
    expect(under([layer('sloped foam tray', 5 / 4), bed, tile])[0]).toMatchObject({ buyUnit: 'm2' });
  });

  test('tile on its bed alone, or on a bed that bears another name, asks for nothing more', () => {
    expect(under([bed, tile])).toEqual([]);
    expect(under([tile])).toEqual([]);
    expect(under([])).toEqual([]);
  });

  test('a membrane right under the tile counts, where no bed is told', () => {
    expect(under([layer('membrane', 1 / 8), tile]).map(({ name }) => name)).toEqual(['membrane']);
  });
});

describe('a membrane or a board is bonded with mortar where the job tells none under it', () => {
  const layer = (name: string, thickness: number): Layer => ({ name, thickness: inches(thickness) });
  const bed = layer('mortar under tile', 1 / 8);
  const tile = layer('tile', 3 / 8);
  const linesOf = (area: number, ...under: readonly Layer[]) =>
    makeMaterials({ ...JOB, base: { ...JOB.base, fresh: [...under, bed, tile] } }, [squareFeet(area)], {});
  const bonds = (...under: readonly Layer[]) => linesOf(100, ...under).filter(({ what }) => what === 'bond');

  // By hand: a bed of 1/4 · (1/4) / (1/2) in at sin 45° is 0.0884 in, 2.245 mm; at 1.6 kg/L on 9.290 m² and a tenth more 36.71 kg.
  test('by a 1/4 in square notch: 36.7 kg on 100 sq ft are 2 bags of 50 lb (common practice, no source)', () => {
    const [line, ...rest] = bonds(layer('membrane', 1 / 8));
    expect(rest).toEqual([]);
    expect(line).toMatchObject({ name: 'membrane', unit: 'kg', buy: 2, buyUnit: 'bag' });
    expect(line!.amount).toBeCloseTo(36.71, 2);
    expect(figures(line, 'material.mortar.sum.bagRate')?.bagCount).toBe(1.38);
  });

  test.each([
    [22, { bagCount: 1, apartCount: 2 }],
    [60, undefined],
  ])('%i sq ft: bags are told together only where that spares one', (area, told) => {
    const lines = linesOf(area, layer('membrane', 1 / 8));
    const [bond, mortar] = [find(lines, 'bond')!, find(lines, 'mortar')!];
    const step = figures(mortar, 'material.mortar.sum.together');
    expect(step && { bagCount: step.bagCount, apartCount: step.apartCount }).toEqual(told);
    if (step) expect(step.massKg).toBeCloseTo(bond.amount + mortar.amount, 9);
  });

  test('a row for each of them, told beside the layer that it bonds', () => {
    const names = bonds(layer('board', 1 / 4), layer('membrane', 1 / 8)).map(({ name }) => name);
    expect(names).toEqual(['board', 'membrane']);
  });

  test('none where mortar is a layer of the job, where the layer sticks by itself or is no board or membrane', () => {
    const [mortar, board, membrane] = [
      layer('mortar', 3 / 32),
      layer('board', 1 / 4),
      layer('membrane', 1 / 8),
    ];
    expect(bonds(mortar, board)).toEqual([]);
    expect(bonds(board, mortar)).toEqual([]);
    expect(bonds(board, mortar, membrane).map(({ name }) => name)).toEqual(['board']);
    expect(bonds(layer('sloped mortar', 5 / 4), membrane).map(({ name }) => name)).toEqual(['membrane']);
    for (const name of ['liquid membrane', 'self-adhesive membrane', 'plywood', 'leveler'])
      expect(bonds(layer(name, 1 / 8))).toEqual([]);
    expect(bonds()).toEqual([]);
  });
});

describe('rings and patch', () => {
  test('rings that the flange asks for are bought: 1/2 and 1/4 in under a flange 19/32 in too low', () => {
    const base = {
      ...JOB.base,
      fresh: [{ name: 'tile', thickness: inches(27 / 32) }],
      heights: [{ name: 'flange', kind: 'flange' as const, height: inches(1 / 4), above: 'boards' }],
    };
    const rings = find(makeMaterials({ ...JOB, base }, [squareFeet(50)], {}), 'ring');
    expect(rings).toMatchObject({ buy: 2, buyUnit: 'ring', name: 'flange' });
  });

  test('a hollow floor needs the patch of its base sheet, in bags where the job says what one fills', () => {
    const flat = [0, 0, 0, 0, 0, 0];
    const heights = [flat, flat, [0, 0, -2540, -2540, 0, 0], flat, flat, flat];
    const grid = { surface: 'floor', from: [], every: inches(24), heights } as unknown as NonNullable<
      Job['base']['grid']
    >;
    const fillOf = (fillBagLitres?: number) => {
      const base = { ...JOB.base, grid, ...(fillBagLitres === undefined ? {} : { fillBagLitres }) };
      const layout = { ...squareFeet(100), pieces: [{ tile: 'field' }] } as unknown as Layout;
      const job = { ...JOB, base };
      return {
        line: find(makeMaterials(job, [layout], {}), 'fill'),
        flat: floorFlatness(job, FLOOR, layout)!,
      };
    };
    const bare = fillOf();
    expect(bare.line).toMatchObject({ amount: bare.flat.patchLitres, buyUnit: 'litre' });
    expect(bare.flat.patchLitres).toBeGreaterThan(0);
    const bags = fillOf(3);
    expect(bags.line).toMatchObject({ buy: bags.flat.patchBags, buyUnit: 'bag' });
  });

  test('a floor that nobody read, and one whose flange fits, ask for neither', () => {
    const all = makeMaterials(JOB, [squareFeet(50)], {}).map(({ what }) => what);
    expect(all).not.toContain('fill');
    expect(all).not.toContain('ring');
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
