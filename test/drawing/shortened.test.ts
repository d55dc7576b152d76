import { describe, expect, test } from 'vitest';
import type { Cut } from '../../src/cuts/Cut.ts';
import { drawCard } from '../../src/drawing/drawCard.ts';
import { shortened } from '../../src/drawing/shortened.ts';
import type { Ring } from '../../src/geometry/index.ts';
import { cuts } from './cutFixtures.ts';
import { say } from './fixture.ts';
import { faultsOf } from './readSvg.ts';

/** A plank of 40 by 8 in, a corner of 4 in sawn off at its right end. */
const inch = 8128;
const plank = { length: 40 * inch, width: 8 * inch };
const outer: Ring = [[0, 0], [36, 0], [40, 4], [40, 8], [0, 8]].map(([x, y]) => [x! * inch, y! * inch]); // biome-ignore format: a ring on a line
const cut: Cut = {
  ...cuts.rip,
  kind: 'odd',
  shape: { outer, holes: [] },
  edges: outer.map((from, i) => ({ from, to: outer[(i + 1) % outer.length]!, factory: i !== 1 })),
  sizes: [
    { what: 'bottomLength', from: 'left', exact: 36 * inch, saw: 36 * inch, at: [[0, 0], [36 * inch, 0]] },
    { what: 'cornerUp', from: 'top', exact: 4 * inch, saw: 4 * inch, at: [[40 * inch, 8 * inch], [40 * inch, 4 * inch]] },
  ], // biome-ignore format: a size on a line
};
const stays = { end: 2 * inch, gap: inch, least: 3 * inch };
const options = { id: 'card', label: 'card', system: 'inches', say, turn: 0, ratio: 12 } as const;
const words = (svg: string) =>
  [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, one]) => one!.replace(/<[^>]*>/g, ''));

describe('a plank whose middle is left out', () => {
  test('keeps both ends as they are, and says where its gap is', () => {
    // 36 in without a corner: 2 stay at each end and 1 between, 31 are left out. Arithmetic.
    const short = shortened(cut, plank, stays)!;
    expect(short.tile).toEqual({ length: 9 * inch, width: 8 * inch });
    expect(short.gap).toEqual([2 * inch, 3 * inch]);
    expect(short.cut.shape.outer.map(([x, y]) => [x / inch, y / inch])).toEqual([
      [0, 0],
      [5, 0],
      [9, 4],
      [9, 8],
      [0, 8],
    ]);
  });

  test('keeps its sizes, whose ends are moved', () => {
    const { sizes } = shortened(cut, plank, stays)!.cut;
    expect(sizes.map(({ saw }) => saw)).toEqual([36 * inch, 4 * inch]);
    expect(sizes[0]!.at[1]).toEqual([5 * inch, 0]);
  });

  test('is not broken where a size or a circle ends in it, nor beside a slant', () => {
    const sized = { ...cut, sizes: [18, 4, 9, 13, 22, 27, 31].map((x) => ({ ...cut.sizes[0]!, at: [[x * inch, 0], [x * inch, 0]] as const })) }; // biome-ignore format: sizes on a line
    expect(shortened(sized, plank, stays)).toBeUndefined();
    const slanted = { ...cut, shape: { outer: [[0, 0], [36, 0], [40, 4], [0, 8]].map(([x, y]) => [x! * inch, y! * inch] as const), holes: [] } }; // biome-ignore format: a ring on a line
    expect(shortened(slanted, plank, stays)).toBeUndefined();
    const holed = { ...cut, sizes: [], circles: [{ name: 'pipe', centre: [18 * inch, 4 * inch] as const, radius: 14 * inch }] }; // biome-ignore format: a circle on a line
    expect(shortened(holed, plank, stays)).toBeUndefined();
  });

  test('is left as it is where too little can be left out, or the tile is no plank', () => {
    expect(shortened(cut, plank, { ...stays, least: 32 * inch })).toBeUndefined();
    expect(shortened(cuts.notch, { length: 96012, width: 96012 }, stays)).toBeUndefined();
  });

  test('is drawn smaller with the same figures', () => {
    const [whole, broken] = [false, true].map((one) => drawCard(cut, plank, { ...options, broken: one }));
    expect(words(broken!.svg)).toEqual(words(whole!.svg));
    expect(words(broken!.svg)).toEqual(['36', '4']);
    expect(broken!.widthMm).toBeLessThan(whole!.widthMm - 20);
    expect(faultsOf(broken!.svg)).toEqual([]);
  });
});
