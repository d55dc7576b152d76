import { describe, expect, test } from 'vitest';
import { textsIn } from '../drawing/readSvg.ts';
import { sheetsOf } from './demos.ts';

/** A kitchen whose short leg has a doorway close by the corner that juts into the room. */
const job = (name: string) => `
title: Kitchen
status: planned
revision: {letter: A, date: 2027-03-01}
print: {paper: a4, units: mm, owner: en, crew: en}
tile: {field: {name: Sand, hexagon: {flats: 228 mm}, thick: 9 mm}}
joint: 4 mm
floor:
  walls: {A-B: 4210 mm, B-C: 3105 mm, C-D: 2400 mm, D-E: 1200 mm, E-F: 1812 mm, F-A: 1908 mm}
  angles: {E: 270}
  doorways:
    ${name}: {in: E-F, from E: 400 mm, clear: 900 mm, wall: 120 mm, left: plain, right: plain, beyond: wood}
  pattern: hexagon
`;

const plansOf = (name: string) => {
  const { sheets } = sheetsOf('kitchen', job(name), ['choice-sheet']);
  return sheets.flatMap(({ data }) => (data as { plans: readonly string[] }).plans);
};

/** Points every half millimetre along each straight line of a drawing, its hatches apart. */
function pointsOn(svg: string): [number, number][] {
  const drawn = svg.replace(/<clipPath.*?<\/clipPath>|<path [^>]*clip-path[^>]*>/gs, '');
  const parts = [...drawn.matchAll(/ d="([^"]+)"/g)].flatMap(([, d]) => d!.split('M'));
  return parts.flatMap((d) => {
    const spots = [...d.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    );
    return spots.slice(1).flatMap(([x, y], i) => {
      const [fromX, fromY] = spots[i]!;
      const steps = Math.ceil(2 * Math.hypot(x - fromX, y - fromY));
      return Array.from({ length: steps + 1 }, (_, k): [number, number] => [
        fromX + ((x - fromX) * k) / Math.max(1, steps),
        fromY + ((y - fromY) * k) / Math.max(1, steps),
      ]);
    });
  });
}

describe('the name of a doorway on the sheet of the choice', () => {
  test('stands where it has room', () => {
    for (const plan of plansOf('hall'))
      expect(
        textsIn(plan)
          .map(({ words }) => words)
          .join(),
      ).toContain('hall');
  });

  test.each(['hall', 'dining room', 'antechamber of the servants'])(
    'of %s lies on no wall and no tile',
    (name) => {
      for (const plan of plansOf(name)) {
        const on = textsIn(plan).filter(({ left, right, top, bottom }) =>
          pointsOn(plan).some(([x, y]) => x > left && x < right && y > top && y < bottom),
        );
        expect(on.map(({ words }) => words)).toEqual([]);
      }
    },
  );
});
