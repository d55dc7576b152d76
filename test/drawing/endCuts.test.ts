import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { drawPlan } from '../../src/drawing/drawPlan.ts';
import { extent, mmPerTick, scaleFor, toPaper } from '../../src/drawing/Scale.ts';
import { surfacePoints } from '../../src/drawing/surfaceScale.ts';
import { pointInRing } from '../../src/geometry/index.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { say } from './fixture.ts';
import { textsIn } from './readSvg.ts';

const space = { portrait: { widthMm: 183, heightMm: 203 }, landscape: { widthMm: 247, heightMm: 140 } };

/** What a plan says of the ends of its axes; tiles of 11 7/8 in, begun whole on A-B, and a wall C-D of 10 ft that may bend. */
function endCutsOf(
  wall: string,
  lies = 'start: {along: tile on D-A, across: tile on A-B}',
  high = '8 ft',
  [tile, joint] = ['11 7/8 in', '1/8 in'],
  stands = '',
) {
  const file = `
title: One wall
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: ${tile} x ${tile}}}
joint: ${joint}
floor:
  walls: {A-B: 10 ft, B-C: ${high}, C-D: ${wall}, D-A: ${high}}
  ${lies}${stands}
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const options = { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space } as const;
  const { svg } = drawPlan(made.packet.surfaces[0]!, options);
  return textsIn(svg).flatMap(({ words }) => (words.startsWith('endCut') ? [words] : []));
}

// 96 in less both gaps of 1/4 in are 95 1/2: seven modules of 12 in and 11 1/2 in.
test('a straight wall ends the axis in the cut that its run leaves', () => {
  expect(endCutsOf('10 ft')).toContain('endCut 11 1/2 in 97');
});

// 120 in less both gaps are 119 1/2: nine modules and 11 1/2 in. The courses between lie 6 in farther on, so that they begin with 5 7/8 in and end with 5 1/2.
test('the ends of a running bond are told for the courses between too', () => {
  const lies = 'pattern: {running: 1/2}\n  start: {along: tile on D-A, across: tile on A-B}';
  const cuts = endCutsOf('10 ft', lies, '20 ft');
  expect(cuts).toContain('endCut 11 7/8 in 100 / endCut 5 7/8 in 49');
  expect(cuts).toContain('endCut 11 1/2 in 97 / endCut 5 1/2 in 46');
});

// 120 in less both gaps are 119 1/2, ten tiles of 11 13/16 with joints of 1/8 between take 119 1/4: the 1/4 in over is left to the gap. The courses between
// lie 5 31/32 in farther on and reach as far as the gap: 5 27/32 + 1/4 in, rounded down.
test('the courses between are cut to the gap where a whole tile ends short of it', () => {
  const lies = 'pattern: {running: 1/2}\n  start: {along: tile on D-A, across: tile on A-B}';
  const cuts = endCutsOf('10 ft', lies, '20 ft', ['11 13/16 in', '1/8 in']);
  expect(cuts).toContain('endCut 11 13/16 in 100 / endCut 6 1/16 in 51');
});

test('or, where there is no room for both, the smaller one alone', () => {
  const lies = 'pattern: {running: 1/2}\n  start: {along: tile on D-A, across: tile on A-B}';
  const cuts = endCutsOf('10 ft', lies, '6 ft');
  expect(cuts.every((words) => !words.includes(' / '))).toBe(true);
  expect(cuts).toEqual(expect.arrayContaining(['endCut 5 7/8 in 49', 'endCut 5 1/2 in 46']));
});

// B-C is 3/4 in longer than D-A, so that C-D runs 3/4 in off over ten tiles: from 96 - 1/2 in, seven modules and 11 1/2 in, to 3/4 in more.
test('cuts along a wall that leans by more than a step of the saw are told from the narrowest to the widest', () => {
  const file = `
title: A lean
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 11 7/8 in x 11 7/8 in}}
joint: 1/8 in
floor:
  walls: {A-B: 10 ft, B-C: 95 3/4 in, C-D: 10 ft, D-A: 95 in}
  diagonals: {A-C: 153 1/2 in}
  start: {along: tile on D-A, across: tile on A-B}
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const [surface] = made.packet.surfaces;
  const { svg } = drawPlan(surface!, { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space });
  const told = textsIn(svg).flatMap(({ words }) => (words.startsWith('endCuts') ? [words] : []));
  expect(told.length).toBeGreaterThan(0);
  const wall = surface!.edges.find(({ id }) => id === 'C-D')!;
  const last = surface!.pieces.filter(({ edges }) => edges.includes('C-D'));
  const foot = Math.min(...last.flatMap(({ shape }) => shape.outer.map(([, y]) => y)));
  // The outer tiles end at the gap before the walls beside it.
  const [far, near] = [wall.from, wall.to].sort(([, a], [, b]) => a - b);
  const share = 2032 / Math.abs(far![0] - near![0]);
  const ys = [share, 1 - share].map((by) => far![1] + by * (near![1] - far![1]));
  const sizes = ys.map((y) => Math.floor((y - 2032 - foot) / 508) / 16);
  const read = [...told[0]!.matchAll(/(?<!\/)\b(\d+)(?: (\d+)\/(\d+))?(?= \d| in)/g)].map(
    ([, whole, top, bottom]) => Number(whole) + (top ? Number(top) / Number(bottom) : 0),
  );
  expect(read.slice(0, 2)).toEqual(sizes);
});

// There a row ends in a triangle: how long it is on the chalk line is the size of no cut.
test('a wall that the axis meets aslant ends it in no cut', () => {
  expect(endCutsOf('10 ft', 'pattern: {straight: {turned: 45}}')).toEqual([]);
});

// Modules are 12 in, gaps 1/4 in, and tile begins whole on A-B and F-A: what is left at each other wall is its distance less its gap and the modules up to it.
test('walls round an arm that no axis ends at are told too', () => {
  const file = `
title: An arm
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 11 7/8 in x 11 7/8 in}}
joint: 1/8 in
floor:
  walls: {A-B: 10 ft, B-C: 42 in, C-D: 60 in, D-E: 57 in, E-F: 60 in, F-A: 99 in}
  angles: {D: 270}
  start: {along: tile on F-A, across: tile on A-B}
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const options = { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space } as const;
  const { svg } = drawPlan(made.packet.surfaces[0]!, options);
  const all = textsIn(svg).filter(({ words }) => words.startsWith('endCut'));
  const told = all.map(({ words }) => words);
  expect(told.sort()).toEqual(
    [
      'endCut 11 7/8 in 100', // A-B
      'endCut 11 1/2 in 97', // B-C: 119 3/4 - 108 1/4
      'endCut 5 1/2 in 46', // C-D: 41 3/4 - 36 1/4
      'endCut 11 1/2 in 97', // D-E: 59 3/4 - 48 1/4
      'endCut 2 1/2 in 21', // E-F: 98 3/4 - 96 1/4
      'endCut 11 7/8 in 100', // F-A
    ].sort(),
  );
});

// The second reader of such a plan takes words on the floor for the cut of the wall that is next to them.
test('no end cut stands on the floor of quarry-kitchen, whose walls E-F and D-E are no ends of an axis', () => {
  const file = readFileSync(new URL('../../jobs/quarry-kitchen/job.yaml', import.meta.url), 'utf8');
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const [surface] = made.packet.surfaces;
  const options = { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space } as const;
  const { svg, ratio, widthMm, heightMm } = drawPlan(surface!, options);
  const told = textsIn(svg).filter(({ words }) => words.startsWith('endCut'));
  // The room stands in the middle of its paper, y up.
  const points = surfacePoints(surface!);
  const { width, height } = extent(points, surface!.turn);
  const free = [
    (widthMm - width * mmPerTick(ratio!)) / 2,
    (heightMm - height * mmPerTick(ratio!)) / 2,
  ] as const;
  const scale = scaleFor(points, surface!.turn, ratio!, free);
  const onPaper = surface!.outline.map((point) => {
    const [x, y] = toPaper(scale, point);
    return [x, heightMm - y] as const;
  });
  const onFloor = told.filter((box) =>
    [box.left, box.right].some((x) => [box.top, box.bottom].some((y) => pointInRing([x, y], onPaper))),
  );
  expect(told.length).toBeGreaterThan(4);
  expect(onFloor.map(({ words }) => words)).toEqual([]);
});

// A chord of 120 in that rises 6: radius c²/8h + h/2 = 303 in, as circular segments stand in Machinery's Handbook (from memory).
// The chalk line runs at 60 3/16 in, all but at the middle: 96 + 6 - 2 · 1/4 = 101 1/2 in, eight modules and a hair under 5 1/2 in.
test('a curved wall ends it in the cut where the chalk line meets its arc', () => {
  expect(endCutsOf('{read: 10 ft, middle: 6 in out}')).toContain('endCut 5 7/16 in 46');
});

// 96 - 6 - 1/2 = 89 1/2 in: seven modules and, a hair more than, 5 1/2 in.
test('one that bends into the room too', () => {
  expect(endCutsOf('{read: 10 ft, middle: 6 in in}')).toContain('endCut 5 1/2 in 46');
});

// Both runs that the start goes by end at the drain. What lies at a wall follows from where a tile stands: what is left to the gap of 1/4 in
// before the wall, less whole modules, on the low side less the joint.
test('what stands in the room takes no end cut to the wall behind it', () => {
  const file = `
title: A drain
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 23 5/8 in x 11 3/4 in}}
joint: 1/8 in
floor:
  walls: {A-B: 84 in, B-C: 66 in, C-D: 84 in, D-A: 66 in}
  obstacles:
    floor drain: {rectangle: 5 in x 5 in, from A-B: 34 in, from B-C: 22 in, meets: drain}
    toilet flange: {circle: 7 in, from C-D: 12 in, from B-C: 18 in, meets: flange}
  exposure: wet
  falls: {to: floor drain, folds: cut}
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const options = { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space } as const;
  const [surface] = made.packet.surfaces;
  const { svg } = drawPlan(surface!, options);
  const told = textsIn(svg).flatMap(({ words }) => (words.startsWith('endCut') ? [words] : []));
  const [x, y] = surface!.start.chosen.origin.map((at) => at / 8128) as [number, number];
  const saw = (left: number, module: number) => {
    const [whole, parts] = [Math.floor(left % module), Math.floor(((left % module) % 1) * 16)];
    const by = parts === 0 ? 1 : Math.min(...[2, 4, 8, 16].filter((one) => (parts * one) % 16 === 0));
    return `${whole}${parts === 0 ? '' : ` ${(parts * by) / 16}/${by}`} in`;
  };
  const ends = [saw(83.75 - x, 23.75), saw(65.75 - y, 11.875), saw(x - 0.375, 23.75), saw(y - 0.375, 11.875)];
  expect(told.map((words) => words.replace(/^endCut (.*) \d+$/, '$1'))).toEqual(ends);
});

// The line at 60 3/16 in ends at the cabinet, 20 in before C-D: after six modules with 3 1/2 in. Along C-D itself tiles are cut to 11 1/2 in as without it.
test('a cabinet at which the line ends takes no cut to the wall beside it', () => {
  const cabinet =
    '\n  obstacles: {cabinet: {rectangle: 30 in x 20 in, from C-D: 0 in, from B-C: 45 in, meets: cabinet}}';
  const cuts = endCutsOf('10 ft', undefined, undefined, undefined, cabinet);
  expect(cuts).toContain('endCut 11 1/2 in 97');
  expect(cuts).not.toContain('endCut 3 1/2 in 29');
});

// Rows of hexagons lie half a module apart: what is left to the gap of 1/4 in of either, and a whole one where that is more.
test('at a wall along which hexagons end in turns at two sizes both are told', () => {
  const file = `
title: Hexagons
revision: {letter: A, date: 2027-03-01}
tile: {field: {hexagon: {flats: 8 in}}}
joint: 1/8 in
floor:
  walls: {A-B: 100 in, B-C: 80 in, C-D: 100 in, D-A: 80 in}
  pattern: hexagon
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const [surface] = made.packet.surfaces;
  const { svg } = drawPlan(surface!, { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space });
  const told = textsIn(svg).flatMap(({ words }) => (words.startsWith('endCut') ? [words] : []));
  const xs = surface!.pieces.flatMap(({ whole, fullTile }) =>
    whole ? [Math.min(...fullTile.map(([x]) => x))] : [],
  );
  const from = xs[0]! / 8128;
  const left = (by: number) => Math.min(8, (99.75 - from - by) % 8.125);
  const sizes = [left(0), left(4.0625)].map((size) => Math.floor(size * 16) / 16);
  const right = told.find((words) => words.includes(' / '))!;
  const read = [...right.matchAll(/endCut (\d+)(?: (\d+)\/(\d+))? in/g)].map(
    ([, whole, top, bottom]) => Number(whole) + (top ? Number(top) / Number(bottom) : 0),
  );
  expect([...read].sort()).toEqual([...sizes].sort());
});

// The bath's own door at A: the axis leaves the room between A and the doorway, whose words and line take the wall.
test('words stand past a doorway rather than across its line', () => {
  const file = `
title: One door
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 7 13/16 in x 7 13/16 in}}
joint: 1/8 in
floor:
  walls: {A-B: 106 in, B-C: 60 in, C-D: 106 in, D-A: 60 in}
  doorways:
    hall: {in: D-A, from A: 5 in, clear: 28 in, wall: 4 1/2 in, door line: 2 1/4 in, beyond: wood}
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const [surface] = made.packet.surfaces;
  const { chalk } = surface!;
  const low = { ...surface!, chalk: { ...chalk, crossing: [chalk.crossing[0], 1174] as const, lines: [] } };
  const { svg } = drawPlan(low, { id: 'plan', label: 'plan', system: 'inches', say, step: 508, space });
  const [door, ...ends] = textsIn(svg).filter(({ words }) => /^(door|endCut)/.test(words));
  const left = ends.reduce((a, b) => (b.left < a.left ? b : a));
  expect(door!.words).toBe('door hall wood');
  expect(left.bottom).toBeLessThan(door!.top);
});
