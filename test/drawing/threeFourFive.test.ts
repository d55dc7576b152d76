import { describe, expect, test } from 'vitest';
import { segmentMeets } from '../../src/drawing/boxes.ts';
import { drawSetOut } from '../../src/drawing/index.ts';
import type { Spot } from '../../src/drawing/Mark.ts';
import { demos } from '../sheets/demos.ts';
import { say } from './fixture.ts';
import { textsIn } from './readSvg.ts';

/** What A4 and Letter leave for a set-out, upright and on the side, in mm. */
const papers = [
  { portrait: { widthMm: 177, heightMm: 200 }, landscape: { widthMm: 254, heightMm: 115 } },
  { portrait: { widthMm: 183, heightMm: 180 }, landscape: { widthMm: 247, heightMm: 118 } },
];
const prints = papers.flatMap((space) => (['mm', 'inches'] as const).map((system) => ({ space, system })));
const floors = demos.flatMap(({ slug, packet }) =>
  packet.surfaces
    .filter(({ chalk }) => chalk.check.diagonal > 0)
    .flatMap((surface) => prints.map((print, i) => [slug, i, surface, print] as const)),
);

/** Thin lines aslant that are longer than a leader, less a fifth at both ends, where it meets the chalk lines and sizes of their marks may stand: the diagonal of the check. */
function diagonals(svg: string): readonly (readonly [Spot, Spot])[] {
  const line = /<path d="M([-\d.]+),([-\d.]+)L([-\d.]+),([-\d.]+)"[^>]*stroke-width="0.25"(?! stroke-dash)/g;
  const inner = (a: number, b: number): readonly [number, number] => [0.8 * a + 0.2 * b, 0.2 * a + 0.8 * b];
  return [...svg.matchAll(line)]
    .map(([, ...ends]) => ends.map(Number) as [number, number, number, number])
    .filter(([x, y, u, v]) => Math.abs(x - u) > 3 && Math.abs(y - v) > 1 && Math.hypot(x - u, y - v) > 15)
    .map(([x, y, u, v]) => {
      const [[left, right], [low, high]] = [inner(x, u), inner(y, v)];
      return [
        [left, low],
        [right, high],
      ];
    });
}

describe('the diagonal of the check', () => {
  test.each(floors)(
    'of %s has no words across it where they would be read as its length, print %i',
    (_slug, _print, surface, { space, system }) => {
      const { svg } = drawSetOut(surface, { id: 'x', label: 'x', say, system, step: 64, space });
      const lines = diagonals(svg);
      expect(lines.length).toBeGreaterThan(0);
      const crossed = textsIn(svg).filter(({ left, right, top, bottom }) =>
        lines.some(([a, b]) => segmentMeets(a, b, { left, right, bottom: top, top: bottom })),
      );
      expect(crossed.map(({ words }) => words)).toEqual([]);
    },
  );
});
