import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';

const job = (tiles: string, pattern: string) => {
  const text = `title: Case
revision: {letter: A, date: 2027-03-01}
tile: ${tiles}
joint: 1/8 in
floor:
  walls: {A-B: 8 ft, B-C: 5 ft, C-D: 8 ft, D-A: 5 ft}
  pattern: ${pattern}
`;
  const reading = readJob(text, 'jobs/case/job.yaml', 'case');
  expect(reading.problems).toEqual([]);
  return reading.job!;
};
const patternOf = (tiles: string, pattern: string) => job(tiles, pattern).surfaces[0]!.pattern;

const SQUARES =
  '{a: {read: 23 7/8 in x 15 7/8 in}, b: {read: 16 in x 16 in}, c: {read: 16 in x 8 in}, d: {read: 8 in x 8 in}}';
const CHEVRON =
  '{left: {chevron: {read: 12 in x 3 in, hand: left}}, right: {chevron: {read: 12 in x 3 in, hand: right}}}';

describe('a pattern by its name alone', () => {
  test.each([
    ['straight', SQUARES, { name: 'straight', tile: 'a' }],
    ['herringbone', SQUARES, { name: 'herringbone', group: 1, tile: 'a' }],
    ['double herringbone', SQUARES, { name: 'herringbone', group: 2 }],
    ['Basketweave', SQUARES, { name: 'basketweave', group: 2 }],
    ['two squares', SQUARES, { name: 'twoSquares', tiles: ['a', 'b'] }],
    ['windmill', SQUARES, { name: 'windmill', tiles: ['a', 'b'] }],
    ['three sizes', SQUARES, { name: 'threeSizes', tiles: ['a', 'b', 'c'] }],
    ['four sizes', SQUARES, { name: 'fourSizes', tiles: ['a', 'b', 'c', 'd'] }],
    ['hexagon', '{a: {hexagon: {flats: 9 in}}}', { name: 'hexagon', tile: 'a' }],
    ['octagon and dot', '{a: {octagon: {flats: 4 in}}, dot: {read: 1 in x 1 in}}', { name: 'octagonAndDot' }],
    ['rhombus', '{a: {rhombus: 8 in x 5 in}}', { name: 'rhombus' }],
    ['chevron', CHEVRON, { name: 'chevron', tiles: ['left', 'right'] }],
    ['penny round', '{a: {round: 3/4 in}}', { name: 'pennyRound' }],
  ])('%s', (pattern, tiles, expected) => {
    expect(patternOf(tiles, pattern)).toMatchObject(expected);
  });
});

describe('a pattern as a map', () => {
  test('says how it lies and which tiles it takes, in its own order', () => {
    expect(patternOf(SQUARES, '{two squares, turned: 45, tiles: [b, d]}')).toMatchObject({
      name: 'twoSquares',
      turnedDeg: 45,
      tile: 'b',
      tiles: ['b', 'd'],
    });
  });

  test('says how many tiles turn as one', () => {
    expect(patternOf(SQUARES, '{basketweave: 3, tile: c}')).toMatchObject({ group: 3, tile: 'c' });
  });

  test('says which two tiles take turns', () => {
    const tiles = '{white: {read: 12 in x 12 in}, black: {read: 12 in x 12 in}}';
    expect(patternOf(tiles, '{straight: , checker: [white, black]}')).toMatchObject({
      tile: 'white',
      checker: ['white', 'black'],
    });
  });

  test('takes the second color of a checker for no tile of the pattern', () => {
    const tiles = '{grey: {read: 12 in x 12 in}, red: {read: 12 in x 12 in}, small: {read: 4 in x 4 in}}';
    expect(patternOf(tiles, '{two squares, checker: [grey, red]}')).toMatchObject({
      tiles: ['grey', 'small'],
      checker: ['grey', 'red'],
    });
  });

  test("says where the tiles of the owner's own lie, in modules", () => {
    const own =
      '{own: {repeat: [[5, 0], [2, 1]], tiles: [{tile: c, at: [0, 0]}, {tile: d, at: [-1, 0], stands: yes}]}}';
    const { name, tiles, own: repeat } = patternOf(SQUARES, own);
    expect([name, tiles, repeat?.repeat]).toEqual(['own', ['c', 'd'], [[5, 0], [2, 1]]]); // biome-ignore format: on a line
    expect(repeat?.places[1]).toEqual({ tile: 'd', at: [-1, 0], stands: true });
  });
});

describe('a tile that is no rectangle', () => {
  const tileOf = (tile: string, pattern: string) =>
    job(`{a: ${tile}, b: {read: 1 in x 1 in}}`, pattern).tiles[0]!;

  // Geometry: across points a regular hexagon is 2/√3 of what it is across flats.
  test('is a hexagon by its flats or by its points', () => {
    const points = (ticks: number) => (ticks / 8128).toFixed(2);
    expect(points(tileOf('{hexagon: {flats: 9 in}}', 'hexagon').width)).toBe('10.39');
    expect(points(tileOf('{hexagon: {points: 10 in}}', 'hexagon').length)).toBe('8.66');
    expect(tileOf('{hexagon: {flats: 9 in, points: 10 3/8 in}}', 'hexagon').length).toBe(9 * 8128);
  });

  // Geometry: the side of a regular octagon is 0.4142 of its flats, its corner 0.2929.
  test('is a regular octagon unless its corner is told', () => {
    const { shape } = tileOf('{octagon: {flats: 10 in}}', 'octagon and dot');
    expect(shape).toEqual({ kind: 'octagon', corner: Math.round(0.29289 * 10 * 8128) });
  });

  test('is measured as it lies where its ends slant', () => {
    const text =
      '{left: {chevron: {read: 10 in x 3 in, angle: 60, hand: left}}, right: {chevron: {read: 10 in x 3 in, angle: 60, hand: right}}}';
    const [{ length, width, shape }] = job(text, 'chevron').tiles as [ReturnType<typeof tileOf>];
    expect([length, width].map((ticks) => (ticks / 8128).toFixed(3))).toEqual(['8.660', '8.464']);
    expect(shape).toEqual({ kind: 'chevron', rise: 5 * 8128, hand: 'left' });
  });
});
