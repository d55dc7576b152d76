import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/Mark.ts';
import { penSvg } from '../../src/drawing/penSvg.ts';

const frame = { id: 'many', label: 'chips', widthMm: 200, heightMm: 150, ratio: null };

/** Corners of every closed or open line of a path in thousandths of a mm, whether written as places or as steps. */
function cornersIn(d: string): number[][] {
  let [x, y] = [0, 0];
  const corners: number[][] = [];
  for (const [, command, written] of d.matchAll(/([MLlAZz])([^MLlAZz]*)/g)) {
    const numbers = [...written!.matchAll(/-?\d*\.?\d+/g)].map(([number]) =>
      Math.round(Number(number) * 1000),
    );
    const pairs = command === 'A' ? [numbers.slice(-2)] : numbers.flatMap((n, i) => (i % 2 ? [] : [[n, numbers[i + 1]!]])); // biome-ignore format: one idea
    for (const [u, v] of pairs) {
      [x, y] = command === 'l' ? [x + u!, y + v!] : [u!, v!];
      corners.push([x, y]);
    }
  }
  return corners;
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
        expect(many).toMatch(/ d="M[\d.]+,[\d.]+l/);
        const once = pathsIn(few).map(cornersIn);
        const again = pathsIn(many).map(cornersIn);
        expect(again.map((corners, i) => corners.slice(0, once[i]!.length))).toEqual(once);
      }),
      { numRuns: 8 },
    );
  });

  test('so is one whose pieces can be tapped, and what can be tapped is where they are', () => {
    const at = [[10, 10], [30, 10], [30, 25.5], [10, 25.5]] as const; // biome-ignore format: corners
    const marks: Mark[] = [{ mark: 'area', rings: [at], line: 'piece' }];
    const links = [{ id: 'piece', to: 'card', label: 'K1-1', rings: [at] }];
    const [piece, link] = pathsIn(penSvg(marks, { ...frame, links }).svg);
    expect(piece).toContain('l');
    expect(cornersIn(link!)).toEqual(cornersIn(pathsIn(penSvg(marks, frame).svg)[0]!));
  });

  test('keeps its circles', () => {
    const circle: Mark = { mark: 'circle', centre: [50, 60], radius: 5, line: 'piece' };
    const arcs = (svg: string) => svg.match(/A[\d.,]+/g)!.slice(0, 2);
    const many = penSvg(Array.from({ length: 5001 }, () => circle), frame).svg; // biome-ignore format: one drawing
    expect(arcs(many)).toEqual(arcs(penSvg([circle], frame).svg));
  });

  test('takes less than half the room', () => {
    const hexagon = [[5, 0], [10, 2.887], [10, 8.66], [5, 11.547], [0, 8.66], [0, 2.887]] as const; // biome-ignore format: corners
    const chips = Array.from({ length: 6000 }, (_, n): Mark => {
      const [x, y] = [(n % 100) * 1.327, Math.floor(n / 100) * 1.711];
      return { mark: 'area', rings: [hexagon.map(([u, v]) => [x + u / 7, y + v / 7])], line: 'joint' };
    });
    const perChip = penSvg(chips, frame).svg.length / 6000;
    expect(perChip).toBeLessThan(60);
    expect(penSvg(chips.slice(0, 4000), frame).svg.length / 4000).toBeGreaterThan(80);
  });
});
