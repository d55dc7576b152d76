import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLimits } from '../../src/materials/makeLimits.ts';
import { feet, inches, type Limit, millimetres, trowelFor } from '../../src/trade/index.ts';
import { FLOOR, fieldLayout, JOB, squareFeet, withFloor, withTile } from './plainJob.ts';

const limits = (job: Job, layout = squareFeet(50, job.joint)) => makeLimits(job, [layout]);
const rule = (found: readonly Limit[], name: string) => found.find((limit) => limit.rule === name);
const running = (numerator: number, denominator: number): Job => ({
  ...JOB,
  surfaces: [
    { ...FLOOR, pattern: { ...FLOOR.pattern, name: 'running', offset: { numerator, denominator } } },
  ],
});

describe('12 × 24 at half offset with a 1/16 in joint: ANSI A108.02 §4.3.8', () => {
  const job = withTile(
    { length: inches(24), width: inches(12), bow: inches(1 / 32) },
    { ...running(1, 2), joint: inches(1 / 16) },
  );
  const found = limits(job);

  test('the offset fails and one third would pass', () => {
    expect(rule(found, 'offset')).toMatchObject({
      pass: false,
      found: 0.5,
      wouldPass: { code: 'limit.offset.pass' },
    });
    expect(rule(limits({ ...job, surfaces: running(1, 3).surfaces }), 'offset')?.pass).toBe(true);
  });

  test('the joint fails: 1/8 in for rectified edges plus the bow', () => {
    expect(rule(found, 'joint.running')).toMatchObject({ pass: false, limit: inches(5 / 32) });
    const calibrated = { ...job, tiles: [{ ...job.tiles[0]!, edge: 'calibrated' as const }] };
    expect(rule(limits(calibrated), 'joint.running')?.limit).toBe(inches(7 / 32));
  });

  test('an approved mock-up lets the offset pass and says whose it is', () => {
    const mockUp = { by: 'A. Owner', date: '2026-10-01' };
    const approved = rule(limits({ ...job, tiles: [{ ...job.tiles[0]!, mockUp }] }), 'offset');
    expect(approved).toMatchObject({
      pass: true,
      wouldPass: { code: 'limit.offset.mockUp', figures: mockUp },
    });
  });
});

describe('6 × 18 plank, calibrated, one third, joint 1.52 mm: ANSI A108.02 §4.3.8', () => {
  const tile = { length: inches(18), width: inches(6), edge: 'calibrated' as const };
  const found = limits(withTile(tile, { ...running(1, 3), joint: millimetres(1.52) }));

  test('the offset passes; the joint fails twice', () => {
    expect(rule(found, 'offset')?.pass).toBe(true);
    expect(rule(found, 'joint.absolute')).toMatchObject({ pass: false, limit: inches(1 / 16) });
    expect(rule(found, 'joint.running')).toMatchObject({ pass: false, limit: inches(3 / 16) });
  });

  test('the base is in the tight class: ANSI A108.01', () => {
    expect(rule(found, 'flatness.tight')).toMatchObject({ found: 'onSite', limit: inches(1 / 8) });
  });
});

describe('joint, bow and flatness of any pattern', () => {
  test('a spread of 1/16 in asks for 3/16: ANSI A108.02 §4.3.8', () => {
    const found = rule(limits(withTile({ spread: inches(1 / 16) })), 'joint.spread');
    expect(found).toMatchObject({ pass: false, wouldPass: { figures: { joint: inches(3 / 16) } } });
  });

  // A shop sells the same trowel by the quarter inch or by 6 mm; the sheet of either is good for the same tile.
  test.each([3, 7, 12, 24])(
    'the usual trowel of a %i in tile passes in both units, whichever is printed',
    (side) => {
      const tile = { length: inches(side), width: inches(side) };
      for (const sold of ['inches', 'mm'] as const)
        for (const system of ['inches', 'mm'] as const) {
          const notch = trowelFor(inches(side), sold);
          const products = { ...JOB.products, mortar: { ...JOB.products.mortar, notch } };
          const job = { ...withTile(tile), products, print: { ...JOB.print, system } };
          const found = rule(limits(job), 'trowel')!;
          expect(found, `${sold} ${system}`).toMatchObject({ pass: true, found: found.limit });
        }
    },
  );

  // 3/8 in deep, half of the floor under notches, at 45°: 0.1326 in; 1/4 in deep: 0.0884 in, upright 1/8 in. Geometry.
  test.each([
    [3 / 8, 1 / 8, true, undefined],
    [1 / 4, 1 / 8, false, 'limit.bed.steeper'],
    [1 / 4, 3 / 16, false, 'limit.bed.deeper'],
  ])('a notch %f in deep under a bed stated as %f in', (depth, stated, pass, code) => {
    const notch = { ...JOB.products.mortar.notch, depth: inches(depth) };
    const mortar = { ...JOB.products.mortar, notch, stated: ['notch'] };
    const fresh = [
      { name: 'mortar under tile', thickness: inches(stated) },
      { name: 'tile', thickness: inches(3 / 8) },
    ];
    const job = { ...JOB, products: { ...JOB.products, mortar }, base: { ...JOB.base, fresh } };
    expect(rule(limits(job), 'bed')).toMatchObject({ pass, ...(code ? { wouldPass: { code } } : {}) });
    expect(rule(limits(JOB), 'bed')).toBeUndefined();
  });

  test('a notch that is advised and leaves less than the heights count says so', () => {
    const mortar = {
      ...JOB.products.mortar,
      notch: { ...JOB.products.mortar.notch, depth: inches(1 / 4) },
      stated: ['notch'],
    };
    const fresh = [
      { name: 'mortar under tile', thickness: inches(1 / 4) },
      { name: 'tile', thickness: inches(3 / 8) },
    ];
    const job = { ...JOB, products: { ...JOB.products, mortar } };
    const told = (one: Job) => rule(limits(one), 'trowel')?.wouldPass?.figures.short;
    expect(told({ ...job, base: { ...JOB.base, fresh } })).toBe('yes');
    expect(told(job)).toBe('no');
  });

  // Square notches as deep as they are wide and apart leave half their depth upright (geometry): of 1/4 in 1/8 in, and more by no trick of the hand.
  test.each([
    [1 / 8, 'limit.trowel.square', undefined],
    [3 / 16, 'limit.trowel.shallow.square', inches(1 / 8)],
  ])('a trowel that cannot leave a bed of %f in even upright is not tried: %s', (stated, code, most) => {
    const notch = {
      kind: 'square',
      width: inches(1 / 4),
      depth: inches(1 / 4),
      space: inches(1 / 4),
    } as const;
    const mortar = { ...JOB.products.mortar, notch, stated: ['notch'] };
    const fresh = [
      { name: 'mortar under tile', thickness: inches(stated) },
      { name: 'tile', thickness: inches(3 / 8) },
    ];
    const job = { ...JOB, products: { ...JOB.products, mortar }, base: { ...JOB.base, fresh } };
    const { wouldPass } = rule(limits(job), 'trowel')!;
    expect([wouldPass!.code, wouldPass!.figures.most]).toEqual([code, most]);
  });

  test('each flatness reading is held against its own span', () => {
    const flatness = [
      { gap: inches(1 / 4), under: feet(10), where: 'by the door' },
      { gap: inches(1 / 8), under: feet(1) },
    ];
    const found = limits({ ...JOB, base: { ...JOB.base, flatness } }).filter(
      (limit) => limit.rule === 'flatness.ordinary',
    );
    expect(found.map(({ pass }) => pass)).toEqual([true, false]);
    expect(found[0]?.at).toEqual(['by the door']);
  });

  test('a reading on a floor that comes up says nothing of the base: what passes stays open, what fails fails', () => {
    const removed = [{ name: 'vinyl', thickness: inches(1 / 8) }];
    const flatness = [1 / 4, 1 / 2].map((gap) => ({ gap: inches(gap), under: feet(10) }));
    const told = (base: Partial<Job['base']>) =>
      limits({ ...JOB, base: { ...JOB.base, flatness, ...base } })
        .filter(({ rule: one }) => one === 'flatness.ordinary')
        .map(({ found, readOn, wouldPass }) => [found, readOn, wouldPass?.figures.layers]);
    expect(told({ removed })).toEqual([
      ['onSite', 'vinyl', 'vinyl'],
      [inches(1 / 2), 'vinyl', undefined],
    ]);
    const bare = [
      [inches(1 / 4), undefined, undefined],
      [inches(1 / 2), undefined, undefined],
    ];
    expect(told({ removed, readOn: 'boards' })).toEqual(bare);
    expect(told({})).toEqual(bare);
  });

  test('so does a grid of readings', () => {
    const heights = Array.from({ length: 6 }, () => [0, 0, 0, 0, 0, 0]);
    const grid = { surface: 'floor', from: [], every: feet(2), heights } as unknown as NonNullable<
      Job['base']['grid']
    >;
    const told = (base: Partial<Job['base']>) =>
      limits({ ...JOB, base: { ...JOB.base, grid, ...base } })
        .filter(({ rule: one }) => one === 'flatness.ordinary')
        .map(({ found }) => found);
    const removed = [{ name: 'vinyl', thickness: inches(1 / 8) }];
    expect(told({})).toEqual([0]);
    expect(told({ removed })).toEqual(['onSite']);
  });
});

describe('movement joints and gaps', () => {
  const long = fieldLayout(feet(26), feet(10), JOB.joint);

  test('26 ft inside need two bays of 13: TCNA EJ171', () => {
    const found = rule(limits(JOB, long), 'movement.dry.along');
    expect(found).toMatchObject({ pass: false, wouldPass: { figures: { bayCount: 2, each: feet(13) } } });
    expect(rule(limits(JOB, long), 'movement.dry.across')?.pass).toBe(true);
  });

  test('sun makes the bays smaller: TCNA EJ171', () => {
    const found = limits(withFloor({ exposure: 'sun' }), long);
    expect(rule(found, 'movement.exposed.along')).toMatchObject({ pass: false, limit: feet(12) });
  });

  test('runs are measured along the walls even where the pattern is turned', () => {
    const turn = Math.PI / 4;
    const turned = fieldLayout(feet(20), feet(3), JOB.joint);
    const field = turned.field.map(({ outer }) => ({
      outer: outer.map(
        ([x, y]) => [Math.round((x + y) * Math.SQRT1_2), Math.round((y - x) * Math.SQRT1_2)] as const,
      ),
      holes: [],
    }));
    const found = Number(rule(limits(JOB, { ...turned, field, turn }), 'movement.dry.along')?.found);
    expect(Math.abs(found - feet(20))).toBeLessThanOrEqual(2);
  });

  test('a gap under 1/8 in fails, under 1/4 is advice: ANSI A108.02 §4.4', () => {
    const at = (gap: number) => limits(JOB, fieldLayout(feet(5), feet(5), JOB.joint, inches(gap)));
    expect(rule(at(1 / 16), 'gap.least')).toMatchObject({ pass: false, at: ['A-B', 'B-C', 'C-D', 'D-A'] });
    expect(rule(at(3 / 16), 'gap.wanted')).toMatchObject({ pass: false, advice: true });
    expect(rule(at(1 / 4), 'gap.wanted')).toBeUndefined();
  });

  test('tile meets the strainer of a drain at a joint, which is no gap at an edge of the floor: TCNA EJ171, as reported', () => {
    const floor = fieldLayout(feet(5), feet(5), JOB.joint);
    const near = (meets: string) => {
      const edges = floor.frame.edges.map((edge) => ({
        ...edge,
        meets,
        gap: inches(1 / 8),
        id: `it:${edge.id}`,
      }));
      const it = { name: 'it', facts: { ...edges[0]!, touch: true }, edges };
      const frame = { ...floor.frame, obstacles: [it] } as unknown as Layout['frame'];
      return rule(limits(JOB, { ...floor, frame }), 'gap.wanted')?.at;
    };
    expect(near('drain')).toBeUndefined();
    expect(near('column')).toHaveLength(4);
  });
});

describe('the house', () => {
  const base = {
    ...JOB.base,
    removed: [{ name: 'sheet vinyl', thickness: 1016 }],
    comesOut: [{ what: 'base' }],
  };
  const { houseYear: _, ...unknown } = { ...JOB, base };

  test('old vinyl stops the job until tested: 29 CFR 1926.1101', () => {
    expect(limits({ ...JOB, base, houseYear: 1957 })[0]).toMatchObject({
      rule: 'house.asbestos',
      pass: false,
      found: 1957,
      at: ['sheet vinyl'],
    });
    expect(limits(unknown)[0]?.found).toBe('unknown');
    expect(rule(limits({ ...JOB, base, houseYear: 1990 }), 'house.asbestos')).toBeUndefined();
  });

  test('where nobody says what lies there, an old house stops until someone has looked: 29 CFR 1926.1101', () => {
    const told = { ...JOB.base, below: 'unknown', removed: [], kept: [], comesOut: [] };
    const stop = (job: typeof JOB) => rule(limits(job), 'house.asbestos');
    expect(stop({ ...JOB, base: told, houseYear: 1931 })?.wouldPass?.code).toBe(
      'limit.house.asbestos.untold',
    );
    expect(stop({ ...JOB, base: told, houseYear: 1990 })).toBeUndefined();
    expect(stop({ ...JOB, base: { ...told, below: 'concrete' }, houseYear: 1931 })).toBeUndefined();
    expect(
      stop({ ...JOB, base: { ...told, kept: [{ name: 'oak strips', thickness: 1016 }] }, houseYear: 1931 }),
    ).toBeUndefined();
  });

  test.each([
    ...[
      'lino',
      'cushion floor',
      'cushioned flooring',
      'sheet goods',
      'asphalt tile',
      'black glue',
      'tar paper',
    ],
    ...['piso vinílico', 'linóleo', 'pegamento negro', 'mástico', 'cola preta', 'suelo acolchado'],
  ])('%s in a house of 1950 stops the job: 29 CFR 1926.1101', (name) => {
    const removed = [{ name, thickness: 960 }];
    expect(
      rule(limits({ ...JOB, base: { ...base, removed }, houseYear: 1950 }), 'house.asbestos'),
    ).toMatchObject({
      at: [name],
      wouldPass: { code: 'limit.house.asbestos.pass' },
    });
  });

  test.each([
    'old tile',
    '9 in tile',
    'Marmora',
    'planks',
    'felt',
    'wood-look tile',
    'carpet over tile',
    'baldosa',
    'piso',
  ])(
    'a layer that no word tells, %s, is asked about in an old house and stays (common practice, no source)',
    (name) => {
      const job = { ...JOB, base: { ...base, removed: [{ name, thickness: 960 }] } };
      expect(rule(limits({ ...job, houseYear: 1950 }), 'house.asbestos')).toMatchObject({
        at: [name],
        wouldPass: { code: 'limit.house.asbestos.unnamed', figures: { layers: name } },
      });
      expect(rule(limits({ ...job, houseYear: 1990 }), 'house.asbestos')).toBeUndefined();
    },
  );

  test.each([
    ...[
      'carpet',
      'carpet cushion',
      'oak strips',
      'plywood',
      'ceramic tile',
      'slate',
      'mortar',
      'floorboards',
      'hardwood',
    ],
    ...['baldosa cerámica', 'madera', 'alfombra', 'carpete', 'tacos', 'cerâmica', 'pedra'],
  ])('%s stops nobody (common practice, no source)', (name) => {
    const kept = [{ name, thickness: 960 }];
    const job = { ...JOB, base: { ...base, removed: [], kept }, houseYear: 1950 };
    expect(rule(limits(job), 'house.asbestos')).toBeUndefined();
  });

  test('base pulled in a house before 1978 may hold lead (from memory)', () => {
    expect(rule(limits({ ...JOB, base, houseYear: 1977 }), 'house.lead')?.pass).toBe(false);
    expect(rule(limits({ ...JOB, base, houseYear: 1978 }), 'house.lead')).toBeUndefined();
  });

  test('below 50 °F nothing is set (common practice, no source)', () => {
    expect(rule(limits({ ...JOB, work: { ...JOB.work, tempC: 9 } }), 'temperature')?.pass).toBe(false);
  });
});
