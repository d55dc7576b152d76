import { describe, expect, test } from 'vitest';
import { drawCutTile, type PlannedPiece, tileScale } from '../../src/drawing/drawCutTile.ts';
import { cuts, tile } from './cutFixtures.ts';
import { say } from './fixture.ts';
import { clashes, faultsOf, textsIn } from './readSvg.ts';

const options = { id: 'one', label: 'one', system: 'inches', say, ratio: 8 } as const;
const kerf = 640;
const step = 508;
const lying = (cut: PlannedPiece['cut'], at: PlannedPiece['at'], turn: PlannedPiece['turn'], name = '') => ({
  cut,
  at,
  turn,
  name,
});
const draw = (...pieces: PlannedPiece[]) => drawCutTile({ tile, pieces, kerf, step }, options);
const words = (svg: string) => textsIn(svg).map((one) => one.words);
const pathsOf = (svg: string, width: number) =>
  [...svg.matchAll(new RegExp(`<path d="([^"]*)"[^>]*stroke-width="${width}"`, 'g'))]
    .map(([, d]) => d!)
    .join('');
const lengthOf = (d: string) =>
  [...d.matchAll(/M([\d.]+),([\d.]+)L([\d.]+),([\d.]+)/g)]
    .map(([, ...ends]) => ends.map(Number) as [number, number, number, number])
    .reduce((sum, [ax, ay, bx, by]) => sum + Math.hypot(bx - ax, by - ay), 0);

const side = 96012 / 320 / 8;
const full = { ...cuts.rip, number: 1 };
/** What stays of the tile beside the rip of 7 5/8 in, less the blade. */
const rest = {
  ...cuts.rip,
  number: 2,
  shape: { outer: [[0, 0], [96012, 0], [96012, 33396], [0, 33396]], holes: [] }, // biome-ignore format: a rectangle on a line
  edges: [
    { from: [0, 0], to: [96012, 0], factory: true },
    { from: [96012, 0], to: [96012, 33396], factory: true },
    { from: [96012, 33396], to: [0, 33396], factory: false },
    { from: [0, 33396], to: [0, 0], factory: true },
  ],
} as const satisfies PlannedPiece['cut'];

describe('a tile that is sawn', () => {
  test('has its factory edges heavy, as long as the pieces have them, at scale', () => {
    const { svg } = draw(lying(full, [0, 0], 0));
    expect(faultsOf(svg)).toEqual([]);
    expect(lengthOf(pathsOf(svg, 1))).toBeCloseTo(side + (2 * 61976) / 320 / 8, 1);
  });

  test('says the number of each cut, and its name where there is room', () => {
    expect(words(draw(lying(full, [0, 0], 0, 'K1-1')).svg)).toEqual(['1', 'K1-1']);
    expect(words(draw(lying(full, [0, 0], 0)).svg)).toEqual(['1']);
  });

  test('has its waste crossed out', () => {
    expect(pathsOf(draw(lying(full, [0, 0], 0)).svg, 0.5)).not.toBe('');
  });

  test('that gives two pieces in one pass has a triangle at both ends of it, and no waste', () => {
    const { svg } = draw(lying(full, [0, 0], 0), lying(rest, [96012, 96012], 180));
    expect(words(svg).sort()).toEqual(['1', '2']);
    expect(pathsOf(svg, 0.5)).toBe('');
    const ink = /<path d="([^"]*)" fill="#000"/.exec(svg)![1]!;
    const triangles = ink.split('M').filter((ring) => ring.split('L').length === 3);
    expect(triangles).toHaveLength(2);
  });

  test('leads the number of a strip out, left and right, without words on words', () => {
    const strip = { ...cuts.rip, shape: { outer: [[0, 0], [6000, 0], [6000, 96012], [0, 96012]], holes: [] } } as const; // biome-ignore format: a strip on a line
    const pieces = [1, 2, 3, 4].map((number, i) =>
      lying({ ...strip, number }, [i < 2 ? i * 7000 : 80000 + (i - 2) * 7000, 0], 0),
    );
    const texts = textsIn(draw(...pieces).svg);
    expect(texts.map((one) => one.words).sort()).toEqual(['1', '2', '3', '4']);
    expect(clashes(texts)).toEqual([]);
  });

  test('is drawn at one scale with the others of its sheet', () => {
    expect(tileScale([tile, { length: 48006, width: 192024 }], { widthMm: 40, heightMm: 40 }, 'inches')).toBe(
      16,
    );
  });
});
