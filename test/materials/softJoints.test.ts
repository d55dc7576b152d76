import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EdgeFacts, Job } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import type { Material } from '../../src/materials/Material.ts';
import { makeMaterials } from '../../src/materials/makeMaterials.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import type { Obstacle } from '../../src/room/Room.ts';
import { inches } from '../../src/trade/index.ts';
import { fieldLayout, JOB, withTile } from './plainJob.ts';

const FEET_IN_METRE = 1 / 0.3048;
const SEALED = ['backer', 'tape'];

function materialsOf(yaml: string): readonly Material[] {
  const { job, problems } = readJob(yaml, 'job.yaml', 'soft-joints');
  if (!job) throw new Error(JSON.stringify(problems));
  const made = makePacket(job);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet.materials;
}

/** Widths of edge joints in inches with their lengths in inches. */
function edgesOf(materials: readonly Material[]): [number, number][] {
  const sealant = materials.find(({ what }) => what === 'sealant')!;
  return sealant.sum
    .filter(({ code }) => code === 'material.sealant.sum.edge')
    .map(({ figures }) => [
      Number(figures.width) / inches(1),
      Math.round(Number(figures.runMetres) * FEET_IN_METRE * 12 * 10) / 10,
    ]);
}

describe('each soft joint has its own width and length (arithmetic)', () => {
  const ROOM = `
title: Room of straight sums
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 11 7/8 in x 11 7/8 in, thick: 3/8 in}}
joint: 1/8 in
floor:
  walls: {A-B: 96 in, B-C: 72 in, C-D: 96 in, D-A: 72 in}
  diagonals: {A-C: 120 in}
`;

  test('walls alone: twice 96 and 72, each less two gaps of 1/4 in', () => {
    expect(edgesOf(materialsOf(ROOM))).toEqual([[1 / 4, 2 * 95.5 + 2 * 71.5]]);
  });

  test('a flange stays open under the toilet, whatever wall it stands near', () => {
    const flange = `${ROOM}  obstacles: {flange: {circle: 7 in, from C-D: 12 in, from D-A: 18 in, meets: flange}}\n`;
    expect(edgesOf(materialsOf(flange))).toEqual([[1 / 4, 2 * 95.5 + 2 * 71.5]]);
  });

  test('tile meets the strainer of a drain at a joint: TCNA EJ171, as reported', () => {
    const drain = `${ROOM}  obstacles: {floor drain: {circle: 4 in, from C-D: 12 in, from D-A: 18 in, gap: 1/8 in}}\n`;
    expect(edgesOf(materialsOf(drain))).toEqual([[1 / 4, 2 * 95.5 + 2 * 71.5]]);
  });

  test('round a pipe runs a joint as wide as its own gap: 3/8 in round 2 in, so 2.75 in across', () => {
    const pipe = `${ROOM}  obstacles: {pipe: {circle: 2 in, from C-D: 12 in, from D-A: 18 in, meets: pipe, gap: 3/8 in}}\n`;
    expect(edgesOf(materialsOf(pipe))).toEqual([
      [1 / 4, 2 * 95.5 + 2 * 71.5],
      [3 / 8, Math.round(2.75 * Math.PI * 10) / 10],
    ]);
  });

  test('a cabinet of 24 by 20 in the corner takes as much wall as it gives of its own sides', () => {
    const cabinet = `${ROOM}  obstacles: {cabinet: {rectangle: 24 in x 20 in, from B-C: 0 in, from C-D: 0 in, meets: cabinet}}\n`;
    expect(edgesOf(materialsOf(cabinet))).toEqual([[1 / 4, 2 * 95.5 + 2 * 71.5]]);
  });

  test('a strip left out along one wall widens the joint there and nowhere else', () => {
    const layout = fieldLayout(inches(100), inches(60), JOB.joint);
    const left = [
      { edge: 'A-B', gap: inches(7 / 16), shape: layout.field[0]!, why: 'gapOnly' as const },
    ] as unknown as Layout['left'];
    expect(edgesOf(makeMaterials(JOB, [{ ...layout, left }], {}))).toEqual([
      [1 / 4, 100 + 2 * 60],
      [7 / 16, 100],
    ]);
  });
});

/** What is left out at the wall A-B of a field of 100 by 60 in, so deep, from and to in inches along it. */
const alongAB = (gap: number, ...parts: readonly (readonly [number, number])[]): Layout['left'] =>
  parts.map(([from, to]) => {
    const at = (x: number, y: number) => [inches(x), inches(y)] as const;
    const outer = [at(from, 0), at(to, 0), at(to, gap - 1 / 4), at(from, gap - 1 / 4)];
    return { edge: 'A-B', gap: inches(gap), shape: { outer, holes: [] }, why: 'gapOnly' };
  });

describe('a wider gap is counted along what it is wide, by hand', () => {
  const layout = fieldLayout(inches(100), inches(60), JOB.joint);
  const sealed = (left: Layout['left']) => edgesOf(makeMaterials(JOB, [{ ...layout, left }], {}));

  test('nicks at the points of tile, a quarter of an inch along the wall, leave the joint 1/4 in wide', () => {
    const nicks = alongAB(15 / 32, [10, 10.25], [30, 30.25], [50, 50.4]);
    expect(sealed(nicks)).toEqual([[1 / 4, 2 * 100 + 2 * 60]]);
  });

  test('three places of five inches are 15 in of the wider joint, as wide as the widest of them', () => {
    const places = [...alongAB(7 / 16, [10, 15], [30, 35]), ...alongAB(15 / 32, [50, 55])];
    expect(sealed(places)).toEqual([
      [1 / 4, 2 * 100 + 2 * 60 - 15],
      [15 / 32, 15],
    ]);
  });

  test('strips with a joint between them are one place, and with all of the wall left out all of it is wider', () => {
    const strips = alongAB(7 / 16, [1 / 4, 20], [20.125, 40], [40.125, 60], [60.125, 80], [80.125, 99.75]);
    expect(sealed(strips)).toEqual([
      [1 / 4, 100 + 2 * 60],
      [7 / 16, 100],
    ]);
  });
});

const linesOf = (materials: readonly Material[]) => materials.filter(({ what }) => SEALED.includes(what));
const bought = (lines: readonly Material[]) =>
  lines.map(({ what, size, buy }) => [what, size, Math.round(buy * FEET_IN_METRE)]);

describe('what backs a soft joint', () => {
  const layout = fieldLayout(inches(100), inches(60), JOB.joint);
  const left = [
    { edge: 'A-B', gap: inches(15 / 32), shape: layout.field[0]!, why: 'gapOnly' as const },
  ] as unknown as Layout['left'];
  const both = { ...layout, left };

  // By hand: 1/4 in takes 5/16 in of backer and 1/8 in of sealant, 7/16 in; 15/32 in would take 19/32 and 15/64, 53/64 in.
  test('tile of 3/8 in on a bed of 1/8 in: backer under 1/4 in, tape under 15/32 in, each a thing to buy of its own', () => {
    const lines = linesOf(makeMaterials(bedded(JOB), [both], {}));
    expect(bought(lines)).toEqual([
      ['backer', inches(5 / 16), Math.ceil((100 + 120) / 12)],
      ['tape', inches(15 / 32), Math.ceil(100 / 12)],
    ]);
  });

  test('tile of 3/4 in has room for both: two backers, not one', () => {
    const lines = linesOf(makeMaterials(bedded(withTile({ thickness: inches(3 / 4) })), [both], {}));
    expect(bought(lines)).toEqual([
      ['backer', inches(5 / 16), Math.ceil((100 + 120) / 12)],
      ['backer', inches(19 / 32), Math.ceil(100 / 12)],
    ]);
  });

  test('over tape the sealant is as deep as the joint', () => {
    const sealant = makeMaterials(bedded(JOB), [both], {}).find(({ what }) => what === 'sealant')!;
    const depths = sealant.sum.flatMap(({ figures }) => (figures.depth === undefined ? [] : [figures.depth]));
    expect(depths).toEqual([inches(1 / 8), inches(1 / 2)]);
  });

  test('for any tile, bed, gap and pipe: what lies in a joint fits its depth, and every joint is backed once', () => {
    const sixteenths = (least: number, most: number) =>
      fc.integer({ min: least, max: most }).map((count) => inches(count / 16));
    const room = fc.record({
      thickness: sixteenths(3, 14),
      bed: sixteenths(1, 6),
      gap: sixteenths(1, 12),
      pipeGap: sixteenths(1, 12),
      joint: sixteenths(1, 8),
      long: fc.boolean(),
    });
    fc.assert(
      fc.property(room, ({ thickness, bed, gap, pipeGap, joint, long }) => {
        const field = fieldLayout(inches(long ? 330 : 100), inches(80), joint, gap);
        const framed = withPipe(field, inches(1), pipeGap);
        const materials = makeMaterials(bedded(withTile({ thickness }), bed), [framed], {});
        const depth = thickness + bed;
        const joints = materials
          .find(({ what }) => what === 'sealant')!
          .sum.filter(({ figures }) => figures.width !== undefined)
          .map(({ figures }) => figures as Record<string, number>);
        for (const { width, depth: sealant } of joints) {
          const line = linesOf(materials).find(({ sum }) =>
            sum.some(({ figures }) => figures.width === width),
          )!;
          if (line.what === 'backer') {
            expect(line.size! + sealant!).toBeLessThanOrEqual(depth);
            expect(line.size! / width!).toBeCloseTo(1.25, 2);
            expect(sealant! / width!).toBeCloseTo(0.5, 2);
          } else {
            expect(line.size).toBe(width);
            expect(sealant).toBe(depth);
            expect(width! < inches(3 / 16) || 1.75 * width! > depth - 2).toBe(true);
          }
        }
        const sizes = linesOf(materials).map(({ what, size }) => `${what} ${size}`);
        expect(new Set(sizes).size).toBe(sizes.length);
        const runs = joints.reduce((sum, { runMetres }) => sum + runMetres!, 0);
        const backed = linesOf(materials).reduce((sum, { amount }) => sum + amount, 0);
        expect(backed).toBeCloseTo(runs, 2);
      }),
      { seed: 24, numRuns: 200 },
    );
  });
});

/** The job with a stated bed under its tile. */
function bedded(job: Job, bed = inches(1 / 8)): Job {
  const fresh = [
    { name: 'mortar under tile', thickness: bed },
    { name: 'tile', thickness: job.tiles[0]!.thickness },
  ] as Job['base']['fresh'];
  return { ...job, base: { ...job.base, fresh } };
}

/** The floor with a round pipe in its middle. */
function withPipe(layout: Layout, diameter: number, gap: number): Layout {
  const [centre, clear] = [[inches(50), inches(40)] as const, diameter / 2 + gap];
  const hole = Array.from({ length: 64 }, (_, at) => {
    const turn = (-2 * Math.PI * at) / 64;
    return [centre[0] + clear * Math.cos(turn), centre[1] + clear * Math.sin(turn)] as const;
  });
  const facts: EdgeFacts = { meets: 'pipe', gap, gapMax: gap, touch: true, seen: 'plain' };
  const circle = { centre, radius: diameter / 2, clearRadius: clear };
  const pipe = { name: 'pipe', facts, ring: hole, cleared: hole, circle, edges: [] } as Obstacle;
  const field = [{ outer: layout.field[0]!.outer, holes: [hole] }];
  return { ...layout, field, frame: { ...layout.frame, field, obstacles: [pipe] } };
}

test('joints beside an inlay are not told as those of a border', () => {
  const inlay = `
title: Room with a rug
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 11 7/8 in x 11 7/8 in, thick: 3/8 in}}
joint: 1/8 in
floor:
  walls: {A-B: 96 in, B-C: 72 in, C-D: 96 in, D-A: 72 in}
  diagonals: {A-C: 120 in}
  inlays: {rug: {rectangle: 40 in x 30 in, from A-B: 20 in, from D-A: 20 in, pattern: straight}}
`;
  const codes = materialsOf(inlay).flatMap(({ sum }) => sum.map(({ code }) => code));
  expect(codes).toContain('material.grout.sum.inlay');
  expect(codes).not.toContain('material.grout.sum.border');
});
