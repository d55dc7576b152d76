import { describe, expect, test } from 'vitest';
import { innerCorners, wallDownTurn } from '../../src/drawing/cutFrame.ts';
import { cardScale, drawCard } from '../../src/drawing/drawCard.ts';
import { drawCutIcon } from '../../src/drawing/drawCutIcon.ts';
import { cuts, tile } from './cutFixtures.ts';
import { say } from './fixture.ts';
import { faultsOf } from './readSvg.ts';

const options = { id: 'card', label: 'card', system: 'inches', say } as const;
const ratio = cardScale([tile], 'inches');
const words = (svg: string) =>
  [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, one]) => one!.replace(/<[^>]*>/g, ''));

/** The heavy lines of a drawing. */
const heavy = (svg: string) =>
  [...svg.matchAll(/<path d="([^"]*)"[^>]*stroke-width="([\d.]+)"/g)]
    .filter(([, , width]) => Number(width) > 0.5)
    .map(([, d]) => d!);

describe('a card of a hard cut', () => {
  test('shows the sizes of the saw, at most four', () => {
    expect(words(drawCard(cuts.notch, tile, { ...options, ratio }).svg)).toEqual(['4 3/16', '7 1/4']);
    expect(words(drawCard(cuts.pocket, tile, { ...options, ratio }).svg)).toHaveLength(4);
    expect(words(drawCard(cuts.hole, tile, { ...options, ratio }).svg)).toEqual(['7', '5', 'Ø 2 1/2']);
  });

  test('turns the wall down: a notch at the upper edge is shown upside down', () => {
    expect(wallDownTurn(cuts.notch)).toBe(180);
    expect(wallDownTurn(cuts.hole)).toBe(0);
  });

  test('says where to drill: the inner corners of notches, none on a round hole', () => {
    expect(innerCorners(cuts.notch)).toHaveLength(1);
    expect(innerCorners(cuts.pocket)).toHaveLength(2);
    expect(innerCorners(cuts.hole)).toHaveLength(0);
  });

  test('draws a round hole by arcs of its true radius', () => {
    const radius = (1.25 * 25.4) / ratio;
    const drawn = /A([\d.]+),/.exec(drawCard(cuts.hole, tile, { ...options, ratio }).svg)![1];
    expect(Number(drawn)).toBeCloseTo(radius, 2);
  });

  test('fits its card of 90 by 76 mm beside the number and over the boxes', () => {
    for (const cut of [cuts.notch, cuts.pocket, cuts.hole]) {
      const { svg, widthMm, heightMm } = drawCard(cut, tile, { ...options, ratio });
      expect(faultsOf(svg)).toEqual([]);
      expect(widthMm).toBeLessThan(70);
      expect(heightMm).toBeLessThan(64);
    }
  });
});

describe('an icon of the saw list', () => {
  test('has one heavy edge a fence setting, numbered where there are two', () => {
    expect(words(drawCutIcon(cuts.rip, tile, options).svg)).toEqual([]);
    expect(words(drawCutIcon(cuts.corner, tile, options).svg)).toEqual(['1', '2']);
  });

  test('has the edges heavy that a cut is measured from where no fence is set', () => {
    // A taper, 7 in at one end and 6 at the other, both from the left.
    const taper = {
      ...cuts.rip,
      fences: [],
      sizes: cuts.rip.sizes.map((size) => ({ ...size, from: 'left' as const })),
    };
    const [edge, ...more] = heavy(drawCutIcon(taper, tile, options).svg);
    expect(more).toEqual([]);
    expect(edge).toMatch(/^M1,1(\.\d+)?L1,10(\.\d+)?$/);
  });

  test('of a plank is wide, so that its short edge is long enough to be seen heavy', () => {
    // A plank of 23 1/2 x 3 13/16 in, mitred at its left end, measured from its right end; what can be seen is common practice, no source.
    const plank = { length: 191008, width: 30988 };
    const shape = { outer: [[30988, 0], [191008, 0], [191008, 30988], [0, 30988]], holes: [] } as const; // biome-ignore format: a ring on a line
    const sizes = cuts.rip.sizes.map((size) => ({ ...size, from: 'right' as const }));
    const [edge] = heavy(drawCutIcon({ ...cuts.rip, fences: [], shape, sizes }, plank, options).svg);
    const [, high, low] = /^M[\d.]+,([\d.]+)L[\d.]+,([\d.]+)$/.exec(edge!)!.map(Number);
    expect(Math.abs(high! - low!)).toBeGreaterThan(3);
  });

  test('of a hexagon has its flat side heavy, and a straightedge at its point where a size is measured from that', () => {
    // 8 in over the flats: a side is 8 / √3 in, and the flats begin half a side over the point, by geometry of the regular hexagon.
    const [length, width] = [65024, 75083];
    const hexagon = { length, width, shape: { kind: 'hexagon' } } as const;
    const from = (on: 'left' | 'bottom') => ({
      ...cuts.rip,
      fences: [],
      sizes: cuts.rip.sizes.map((size) => ({ ...size, from: on })),
    });
    const ends = (on: 'left' | 'bottom') => {
      const [edge = ''] = heavy(drawCutIcon(from(on), hexagon, options).svg);
      return [...edge.matchAll(/[ML]([\d.]+),([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    };
    const [[leftX, high], [, low]] = ends('left') as [readonly [number, number], readonly [number, number]];
    expect(Math.abs(high - low)).toBeCloseTo((9 * (length / Math.sqrt(3))) / width, 1);
    const point = ends('bottom');
    expect(new Set(point.map(([, y]) => y)).size).toBe(1);
    expect(point[0]![1]).toBeGreaterThan(Math.max(high, low) + 1);
    expect(Math.min(...point.map(([x]) => x))).toBeCloseTo(leftX, 1);
  });
});
