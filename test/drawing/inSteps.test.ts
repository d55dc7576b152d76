import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/Mark.ts';
import { penSvg } from '../../src/drawing/penSvg.ts';

const frame = { id: 'many', label: 'chips', widthMm: 200, heightMm: 150, ratio: null };

/** Corners of every line of a path in hundredths of a mm, whether written as places or as steps: none twice running, nor the first at a closed end. */
function linesIn(d: string): number[][][] {
  let [x, y] = [0, 0];
  const lines: number[][][] = [];
  const reach = (u: number, v: number) => {
    [x, y] = [u, v];
    lines.at(-1)!.push([Math.round(100 * x), Math.round(100 * y)]);
  };
  for (const [, command, written] of d.matchAll(/([MmLlHhVvAaZz])([^A-Za-z]*)/g)) {
    const numbers = [...written!.matchAll(/-?\d*\.?\d+/g)].map(Number);
    const size = { M: 2, L: 2, H: 1, V: 1, A: 7, Z: 1 }[command!.toUpperCase()]!;
    if (command!.toUpperCase() === 'M') lines.push([]);
    if (command!.toUpperCase() === 'Z')
      [x, y] = lines.at(-1)![0]!.map((one) => one / 100) as [number, number];
    for (let at = 0; at < numbers.length; at += size) {
      const [u = 0, v = 0] = numbers.slice(at, at + size).slice(-2);
      if (command === 'h') reach(x + u, y);
      else if (command === 'v') reach(x, y + u);
      else if (command === command!.toLowerCase()) reach(x + u, y + v);
      else reach(u, v);
    }
  }
  return lines.map((line) => {
    const apart = line.filter((at, i) => `${at}` !== `${line[i - 1]}`);
    return apart.length > 1 && `${apart[0]}` === `${apart.at(-1)}` ? apart.slice(0, -1) : apart;
  });
}

const pathsIn = (svg: string) => [...svg.matchAll(/ d="([^"]*)"/g)].map(([, d]) => d!);
const mm = fc.double({ min: 1, max: 149, noNaN: true });
const ring = fc.array(fc.tuple(mm, mm), { minLength: 3, maxLength: 7 });

function drawn(rings: readonly (readonly (readonly [number, number])[])[], times: number) {
  const marks: Mark[] = rings.map((one) => ({ mark: 'area', rings: [one], line: 'joint', fill: 'cut' }));
  return penSvg(Array.from({ length: times }, () => marks).flat(), frame).svg;
}

describe('a drawing of thousands of pieces', () => {
  test('is written in steps from corner to corner, and every corner is where it was', () => {
    fc.assert(
      fc.property(fc.array(ring, { minLength: 1, maxLength: 3 }), (rings) => {
        const [few, many] = [drawn(rings, 1), drawn(rings, Math.ceil(5001 / rings.length))];
        const once = pathsIn(few).map(linesIn);
        const again = pathsIn(many).map(linesIn);
        expect(again.map((lines, i) => lines.slice(0, once[i]!.length))).toEqual(once);
      }),
      { numRuns: 8 },
    );
  });

  test('so is one whose pieces can be tapped, and what can be tapped is where they are', () => {
    const at = [[10, 10], [30, 10], [30, 25.5], [10, 25.5]] as const; // biome-ignore format: corners
    const marks: Mark[] = [{ mark: 'area', rings: [at], line: 'piece' }];
    const links = [{ id: 'piece', to: 'card', label: 'K1-1', rings: [at] }];
    const [piece, link] = pathsIn(penSvg(marks, { ...frame, links }).svg);
    expect(piece).toMatch(/^m/);
    expect(linesIn(link!)).toEqual(linesIn(pathsIn(penSvg(marks, frame).svg)[0]!));
  });

  test('keeps its circles', () => {
    const circle: Mark = { mark: 'circle', centre: [50, 60], radius: 5, line: 'piece' };
    const many = penSvg(Array.from({ length: 5001 }, () => circle), frame).svg; // biome-ignore format: one drawing
    const [before] = pathsIn(penSvg([circle], frame).svg);
    const [after] = pathsIn(many);
    expect(after!.startsWith('m55,90.02a5,5,0,1,0-10,0,5,5,0,1,0,10,0z')).toBe(true);
    expect(linesIn(after!)[0]).toEqual(linesIn(before!)[0]);
  });

  test('takes less than half the room', () => {
    const hexagon = [[5, 0], [10, 2.887], [10, 8.66], [5, 11.547], [0, 8.66], [0, 2.887]] as const; // biome-ignore format: corners
    const chips = Array.from({ length: 6000 }, (_, n): Mark => {
      const [x, y] = [(n % 100) * 1.327, Math.floor(n / 100) * 1.711];
      return { mark: 'area', rings: [hexagon.map(([u, v]) => [x + u / 7, y + v / 7])], line: 'joint' };
    });
    const perChip = penSvg(chips, frame).svg.length / 6000;
    expect(perChip).toBeLessThan(45);
    expect(penSvg(chips.slice(0, 4000), frame).svg.length / 4000).toBeGreaterThan(80);
  });
});
