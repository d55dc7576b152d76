import { describe, expect, test } from 'vitest';
import { type HatchName, hatches } from '../../src/drawing/hatches.ts';
import type { Mark } from '../../src/drawing/Mark.ts';
import { penSvg, wholePixels } from '../../src/drawing/penSvg.ts';
import { boxedWord } from '../../src/drawing/signs.ts';
import { sawFigure, text } from '../../src/drawing/text.ts';
import { faultsOf } from './readSvg.ts';

const frame = { id: 'one', label: 'a <b> & "c"', widthMm: 50, heightMm: 40, ratio: null };
const square = [[0, 0], [10, 0], [10, 10], [0, 10]] as const; // biome-ignore format: a square on a line

describe('the pen', () => {
  test('turns y down: the lower left of the marks is the lower left of the drawing', () => {
    const { svg, heightMm } = penSvg([{ mark: 'path', steps: [[0, 0], [10, 5]], line: 'wall' }], frame); // biome-ignore format: two ends
    const high = Number(heightMm.toFixed(3));
    expect(svg).toContain(`d="M0,${high}L10,${Number((high - 5).toFixed(3))}"`);
  });

  test('writes sizes in mm that are whole CSS pixels, 96 to the inch (CSS Values and Units 3)', () => {
    const { svg, widthMm } = penSvg([], frame);
    const [, width, x] = /width="([\d.]+)mm".*viewBox="0 0 ([\d.]+)/.exec(svg)!;
    expect(width).toBe(x);
    expect((widthMm * 96) / 25.4).toBeCloseTo(Math.round((widthMm * 96) / 25.4), 9);
    expect(wholePixels(50)).toBeGreaterThanOrEqual(50);
  });

  test('escapes what it is given', () => {
    const { svg } = penSvg([text([5, 5], '<script>alert("1")</script>')], { ...frame, id: '"><script>' });
    expect(faultsOf(svg)).toEqual([]);
    expect(svg).not.toContain('<script');
  });

  test('draws an arc as an arc', () => {
    const arc: Mark = {
      mark: 'path',
      steps: [[10, 5], { centre: [5, 5], radius: 5, from: 0, to: Math.PI }],
      line: 'sawn',
    };
    expect(penSvg([arc], frame).svg).toMatch(/A5,5,0,[01],0,0,/);
  });

  test('gives a word in a box white ground over the lines below it, and draws the box over that', () => {
    const line: Mark = { mark: 'path', steps: [[20, 0], [20, 40]], line: 'seam' }; // biome-ignore format: two ends
    for (const marks of [
      [line, ...boxedWord([20, 20], 'here')],
      [...boxedWord([20, 20], 'here'), line],
    ]) {
      const { svg } = penSvg(marks, frame);
      const ground = svg.lastIndexOf('fill="#fff"');
      expect(svg.indexOf('stroke-dasharray')).toBeGreaterThan(0);
      expect(svg.indexOf('stroke-dasharray')).toBeLessThan(ground);
      expect(svg.lastIndexOf('stroke-width')).toBeGreaterThan(ground);
      expect(svg.indexOf('>here<')).toBeGreaterThan(ground);
    }
  });

  test('writes a figure so that it is read as whole, space, numerator, slash, denominator', () => {
    const { svg } = penSvg([sawFigure([20, 20], { whole: '7', numerator: '5', denominator: '8' })], frame);
    expect(svg.replace(/<[^>]*>/g, '')).toBe('7 5/8');
    const sizes = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, mm]) => (Number(mm) * 72) / 25.4);
    expect(sizes[0]).toBeGreaterThanOrEqual(26);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(16);
  });

  test('names its hatches by the drawing, and no two hatches look alike', () => {
    const marks = (Object.keys(hatches) as HatchName[]).map(
      (fill): Mark => ({ mark: 'area', rings: [square], fill }),
    );
    const { svg } = penSvg(marks, frame);
    const areas = [...svg.matchAll(/<clipPath id="([^"]*)"/g)].map(([, id]) => id);
    expect(areas).toEqual(Object.keys(hatches).map((name) => `one-${name}`));
    const lines = [...svg.matchAll(/<path d="([^"]*)"[^>]*clip-path="url\(#([^)]*)\)"/g)];
    expect(lines.map(([, , id]) => id)).toEqual(areas);
    expect(new Set(lines.map(([, d]) => d)).size).toBe(areas.length);
  });
});
