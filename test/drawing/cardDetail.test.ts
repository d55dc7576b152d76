import { describe, expect, test } from 'vitest';
import type { Cut } from '../../src/cuts/Cut.ts';
import { drawCard } from '../../src/drawing/drawCard.ts';
import { circleRing, type Point, type Ring } from '../../src/geometry/index.ts';
import { demos } from '../sheets/demos.ts';
import { cuts, tile } from './cutFixtures.ts';
import { say } from './fixture.ts';
import { clashes, textsIn } from './readSvg.ts';

const inch = 8128;
const full = tile.length;
const options = { id: 'card', label: 'card', system: 'inches', say, ratio: 12 } as const;

/** A cut by its outline alone: what lies on the tile's sides is factory edge. */
function cutOf(outer: Ring, circles: Cut['circles'] = []): Cut {
  const edges = outer.map((from, i) => {
    const to = outer[(i + 1) % outer.length]!;
    const onSide = (axis: 0 | 1) => from[axis] === to[axis] && (from[axis] === 0 || from[axis] === full);
    return { from, to, factory: onSide(0) || onSide(1) };
  });
  return {
    ...cuts.notch,
    shape: { outer, holes: [] },
    edges: circles.length > 0 ? edges.slice(0, 4) : edges,
    circles,
    sizes: [],
  };
}

/** A notch so many inches deep and wide out of the upper right corner. */
const notch = (wide: number, deep: number) =>
  cutOf([
    [0, 0],
    [full, 0],
    [full, full - Math.round(deep * inch)],
    [full - Math.round(wide * inch), full - Math.round(deep * inch)],
    [full - Math.round(wide * inch), full],
    [0, full],
  ]);

/** A bite so many inches deep out of the right side, of a pipe with a radius of 7/8 in. */
function bite(deep: number): Cut {
  const radius = Math.round(0.875 * inch);
  const centre: Point = [full + radius - Math.round(deep * inch), Math.round(5 * inch)];
  const on = circleRing(centre, radius).filter(([x]) => x < full);
  const up = [...on].sort((a, b) => a[1] - b[1]);
  return cutOf([[0, 0], [full, 0], ...up, [full, full], [0, full]], [{ centre, radius, name: 'pipe' }]);
}

const scaleOf = (svg: string) => textsIn(svg).find(({ words }) => /^\d:\d$/.test(words));
/** Lengths of the sawn lines of a drawing, in mm. */
const sawn = (svg: string) =>
  [...svg.matchAll(/<path d="([^"]*)" fill="none" stroke="#000" stroke-width="0\.35"\/>/g)]
    .flatMap(([, d]) => [...d!.matchAll(/M([-\d.]+),([-\d.]+)L([-\d.]+),([-\d.]+)/g)])
    .map(([, ...ends]) => ends.map(Number) as [number, number, number, number])
    .map(([x, y, toX, toY]) => Math.hypot(toX - x, toY - y));

describe('the card of a cut with a step too small to be seen', () => {
  test('shows it larger, true to the scale that stands under it', () => {
    const { svg } = drawCard(notch(3, 0.4375), tile, options);
    expect(scaleOf(svg)!.words).toBe('1:2');
    expect(sawn(svg).some((long) => Math.abs(long - (0.4375 * 25.4) / 2) < 0.02)).toBe(true);
    expect(sawn(svg).some((long) => Math.abs(long - (0.4375 * 25.4) / 12) < 0.02)).toBe(true);
  });

  test('shows a step of 1/16 in at twice its size', () => {
    expect(scaleOf(drawCard(notch(3, 0.0625), tile, options).svg)!.words).toBe('2:1');
  });

  test('shows a shallow bite of a pipe as wide as the square holds it', () => {
    expect(scaleOf(drawCard(bite(0.1875), tile, options).svg)!.words).toBe('1:2');
  });

  test('has no such square where all can be seen', () => {
    for (const cut of [notch(4, 3), cuts.notch, cuts.pocket, cuts.hole])
      expect(scaleOf(drawCard(cut, tile, options).svg)).toBeUndefined();
  });
});

describe('cards of demos', () => {
  const cards = demos.flatMap(({ slug, sheets }) =>
    sheets
      .filter(({ template }) => template === 'hard-cuts')
      .flatMap(({ data }) => (data as { cards: { number: number; drawing: string }[] }).cards)
      .map(({ number, drawing }) => ({ name: `${slug} ${number}`, drawing })),
  );

  test('show what is too small: the bite of a pipe and a step of 7/16 in', () => {
    const larger = cards.filter(({ drawing }) => scaleOf(drawing)).map(({ name }) => name);
    expect(larger).toEqual(expect.arrayContaining(['fernlea-boot-room 21', 'fernlea-boot-room 23']));
  });

  test('have no words on words', () => {
    for (const { drawing } of cards) expect(clashes(textsIn(drawing))).toEqual([]);
  });
});
