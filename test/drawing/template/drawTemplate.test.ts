import { describe, expect, test } from 'vitest';
import { drawTemplate, drawTemplateKey, planTemplate } from '../../../src/drawing/index.ts';
import { tileOutline } from '../../../src/pattern/index.ts';
import { cuts, tile } from '../cutFixtures.ts';
import { say } from '../fixture.ts';
import { clashes, faultsOf, textsIn } from '../readSvg.ts';

const options = { id: 'one', label: 'one', system: 'inches', say } as const;
const words = { number: '12', lines: ['Face up', '2 × K1-1 · K2-1'] };
/** What Letter leaves for a drawing, a page that holds the tile, and one that holds a quarter of it. */
const spaces = {
  letter: { widthMm: 174, heightMm: 199 },
  large: { widthMm: 320, heightMm: 320 },
  small: { widthMm: 170, heightMm: 170 },
};
const hard = Object.entries({ notch: cuts.notch, pocket: cuts.pocket, hole: cuts.hole });

/** Corners of the lines of a width, in mm from the lower left of the window. */
function spotsOf(svg: string, heightMm: number, width: number): (readonly [number, number])[] {
  const drawn = [
    ...svg.matchAll(new RegExp(`<path d="([^"]*)"[^>]*stroke-width="${width}"(?! stroke-dash)`, 'g')),
  ];
  return drawn.flatMap(([, d]) =>
    [...d!.matchAll(/[ML]([-\d.]+),([-\d.]+)/g)].map(
      ([, x, y]) => [Number(x), heightMm - Number(y)] as const,
    ),
  );
}

function sizeOf(spots: readonly (readonly [number, number])[]): readonly [number, number] {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

describe.each(hard)('a template of a %s', (_name, cut) => {
  test('on one page is as large as the piece, to the thousandth of a millimetre', () => {
    const plan = planTemplate(cut, tile, spaces.large);
    expect([plan.grid.pages.length, plan.broken]).toEqual([1, []]);
    const { svg, heightMm } = drawTemplate(plan, 0, words, options);
    const [width, height] = sizeOf(cut.shape.outer).map((ticks) => ticks / 320) as [number, number];
    const exact = [...sizeOf(spotsOf(svg, heightMm, 0.18))].sort((a, b) => b - a);
    expect(exact).toEqual([expect.closeTo(width, 2), expect.closeTo(height, 2)]);
  });

  test('bears heavy lines half a millimetre inside its factory edges, so that their outer side is the edge', () => {
    const plan = planTemplate(cut, tile, spaces.large);
    const { svg, heightMm } = drawTemplate(plan, 0, words, options);
    const [exact, heavy] = [0.18, 1].map((width) => spotsOf(svg, heightMm, width).map(([x]) => x)) as [
      number[],
      number[],
    ];
    expect(Math.min(...heavy) - Math.min(...exact)).toBeCloseTo(0.5, 2);
    expect(Math.max(...exact) - Math.max(...heavy)).toBeCloseTo(0.5, 2);
  });

  test.each(Object.entries(spaces))(
    'fits each of its pages on %s, without words on words',
    (_paper, space) => {
      const plan = planTemplate(cut, tile, space);
      for (const page of plan.grid.pages) {
        const { svg, widthMm, heightMm } = drawTemplate(plan, page, words, options);
        // The pen goes up to the next whole pixel, 0.26 mm.
        expect(widthMm).toBeLessThan(space.widthMm + 0.3);
        expect(heightMm).toBeLessThan(space.heightMm + 0.3);
        expect(faultsOf(svg)).toEqual([]);
        const texts = textsIn(svg);
        expect(clashes(texts)).toEqual([]);
        expect(
          texts.filter((one) => one.left < 0 || one.top < 0 || one.right > widthMm || one.bottom > heightMm),
        ).toEqual([]);
        const spots = [0.18, 0.35, 0.25].flatMap((width) => spotsOf(svg, heightMm, width));
        expect(
          spots.filter(([x, y]) => x < -0.01 || y < -0.3 || x > widthMm + 0.01 || y > heightMm + 0.01),
        ).toEqual([]);
      }
    },
  );

  test('says its number on every page that has room for it', () => {
    const plan = planTemplate(cut, tile, spaces.small);
    const said = plan.grid.pages.map((page) => textsIn(drawTemplate(plan, page, words, options).svg));
    expect(said.map((texts) => texts.some((one) => one.words === '12'))).toEqual(said.map(() => true));
  });
});

describe('a template turned as its card', () => {
  const wide = { outer: [[0, 0], [180 * 320, 0], [180 * 320, 60 * 320], [0, 60 * 320]], holes: [] } as const; // biome-ignore format: corners of a strip
  const strip = { ...cuts.rip, shape: wide };
  const sides = { length: 180 * 320, width: 100 * 320 };

  test.each([0, 90, 180, 270] as const)('lies by %i degrees where its pages do', (turn) => {
    const { laid, turned } = planTemplate(cuts.notch, tile, spaces.large, turn);
    const [x, y] = cuts.notch.shape.outer[1]!;
    const { length, width } = tile;
    const by = { 0: [x, y], 90: [width - y, x], 180: [length - x, width - y], 270: [y, length - x] };
    expect([laid.shape.outer[1], turned]).toEqual([by[turn], false]);
  });

  test('lies a quarter turn from it only where that saves a page, and tells so', () => {
    expect(planTemplate(strip, sides, spaces.letter, 0).turned).toBe(true);
    expect(planTemplate(strip, sides, spaces.letter, 90).turned).toBe(false);
    expect(planTemplate(strip, sides, spaces.large, 0).turned).toBe(false);
  });
});

test('a part of the piece is left off where that saves pages, but no factory edge in either direction', () => {
  for (const cut of [cuts.notch, cuts.hole]) {
    const plan = planTemplate(cut, tile, spaces.letter);
    expect(plan.grid.pages.length).toBeLessThan(4);
    expect(plan.broken.length).toBeGreaterThan(0);
    const shown = plan.grid.pages.map((page) => {
      const { svg, heightMm } = drawTemplate(plan, page, words, options);
      return sizeOf(spotsOf(svg, heightMm, 1));
    });
    expect(Math.max(...shown.map(([wide]) => wide))).toBeGreaterThan(29);
    expect(Math.max(...shown.map(([, high]) => high))).toBeGreaterThan(29);
  }
});

test('all factory edges are heavy, those of a hexagon that slant too, and what is sawn is not', () => {
  const hexagon = { length: 65066, width: 75132, shape: { kind: 'hexagon' } } as const;
  const outer = tileOutline(hexagon)
    .slice(0, 2)
    .concat([[65066, 52260], [0, 52260], [0, 18783]]); // biome-ignore format: corners on a line
  const cut = { ...cuts.rip, shape: { outer, holes: [] } };
  const { edges } = planTemplate(cut, hexagon, spaces.large).laid;
  expect(edges.map(({ factory }) => factory)).toEqual([true, true, false, true, true]);
});

describe('pages of one template', () => {
  const plan = planTemplate(cuts.pocket, { ...tile, width: 2 * tile.width }, spaces.letter);
  const letters = plan.grid.pages.map((page) =>
    textsIn(drawTemplate(plan, page, { number: '', lines: [] }, options).svg).filter(
      ({ words: one }) => one !== '',
    ),
  );

  test('bear each letter on two of them, at the same place of the piece', () => {
    const places = new Map<string, (readonly [number, number])[]>();
    for (const [i, page] of plan.grid.pages.entries()) {
      const { left, top } = plan.grid.windows[page]!;
      for (const { words: letter, left: x, bottom: y } of letters[i]!)
        places.set(letter, [...(places.get(letter) ?? []), [left + x, top - y]]);
    }
    expect(places.size).toBeGreaterThan(1);
    for (const [one, other] of places.values()) {
      expect(other?.[0]).toBeCloseTo(one![0], 0);
      expect(other?.[1]).toBeCloseTo(one![1], 0);
    }
  });

  test('stand on a key, this one heavy', () => {
    const { svg, widthMm, heightMm } = drawTemplateKey(plan, plan.grid.pages[0]!, options);
    expect(faultsOf(svg)).toEqual([]);
    expect(svg.match(/stroke-width="0.7"/g)).toHaveLength(1);
    expect(widthMm).toBeLessThan(28.3);
    expect(heightMm).toBeLessThan(22.3);
  });
});
