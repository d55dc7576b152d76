import { describe, expect, test } from 'vitest';
import type { PatternSpec, TileSpec } from '../../src/job/Job.ts';
import { makePattern, patternProblems } from '../../src/pattern/index.ts';
import { patternCase } from './patternCases.ts';
import { areaOf, repeatArea } from './support/cells.ts';
import { tileOf } from './support/tileOf.ts';

const IN = 8128;
const MM = 320;
const inches = (value: number) => Math.round(value * IN);
const tile = (key: string, length: number, width = length) => tileOf(key, inches(length), inches(width));
/** A tile whose side and one joint of 1/8 in are so many inches. */
const module = (key: string, length: number, width = length) => tile(key, length - 1 / 8, width - 1 / 8);
const make = (
  name: PatternSpec['name'],
  tiles: readonly TileSpec[],
  joint = 1 / 8,
  more: Partial<PatternSpec> = {},
) => makePattern(patternCase(name, tiles, 0, more).spec, tiles, inches(joint));

type Made = ReturnType<typeof make>;

/** Tiles of each key on an area. */
const countOn = (pattern: Made, area: number) => {
  const counts: Record<string, number> = {};
  for (const { tile: key } of pattern.tiles) counts[key] = (counts[key] ?? 0) + area / repeatArea(pattern);
  return counts;
};
const HUNDRED_SQ_FT = 100 * 144 * IN * IN;

/** Shares of the area by tile, joints shared out, in percent. */
const shares = (pattern: Made, ...areas: number[]) => {
  const per = countOn(pattern, repeatArea(pattern));
  const all = Object.values(per).reduce((sum, count, i) => sum + count * areas[i]!, 0);
  return Object.values(per).map((count, i) => Math.round((1e4 * count * areas[i]!) / all) / 100);
};

// All figures here follow from the shapes alone: geometry, worked again by hand, no source needed.
describe('counts on 100 sq ft', () => {
  test('of 11 7/8 in tiles with 1/8 in joints are 100', () => {
    expect(countOn(make('straight', [tile('field', 11.875)]), HUNDRED_SQ_FT).field).toBeCloseTo(100, 9);
  });

  test('of 600 x 300 mm with 3 mm joints are 5.473 a square metre, at any offset', () => {
    const big = tileOf('field', 600 * MM, 300 * MM);
    const per = (name: PatternSpec['name']) =>
      countOn(makePattern(patternCase(name, [big], 0).spec, [big], 3 * MM), 1e6 * MM * MM).field;
    expect(per('straight')).toBeCloseTo(5.473, 3);
    expect(per('running')).toBeCloseTo(per('straight')!, 9);
  });

  test.each([1, 2])('of herringbone 12 x 24 by module are 50, %i by %i', (group) => {
    expect(
      countOn(make('herringbone', [module('field', 24, 12)], 1 / 8, { group }), HUNDRED_SQ_FT).field,
    ).toBeCloseTo(50, 9);
  });

  test('of herringbone 2 x 6 with 1/8 in joints are 1106.4', () => {
    expect(countOn(make('herringbone', [tile('field', 6, 2)]), HUNDRED_SQ_FT).field).toBeCloseTo(1106.4, 1);
  });

  test('of hexagons 8 in across flats with 1/8 in joints are 251.9, each 57.17 sq in with its joint', () => {
    const hexagon = tileOf('field', 8 * IN, Math.round((16 * IN) / Math.sqrt(3)), { kind: 'hexagon' });
    const pattern = make('hexagon', [hexagon]);
    expect(repeatArea(pattern) / 2 / IN / IN).toBeCloseTo(57.17, 2);
    expect(countOn(pattern, HUNDRED_SQ_FT).field).toBeCloseTo(251.9, 1);
  });

  test('of four sizes on a unit of 8 in are 12.5, 25, 12.5 and 25', () => {
    const tiles = [module('xl', 24, 16), module('l', 16), module('m', 16, 8), module('s', 8)];
    expect(countOn(make('fourSizes', tiles), HUNDRED_SQ_FT)).toEqual({ xl: 12.5, l: 25, m: 12.5, s: 25 });
  });

  test('of two squares 12 and 4 by module are 90 of each', () => {
    const counts = countOn(make('twoSquares', [module('large', 12), module('small', 4)]), HUNDRED_SQ_FT);
    expect(counts).toEqual({ large: 90, small: 90 });
  });
});

describe('shares of the area by module', () => {
  // Printed guides give 88.9 and 11.1 for 12 and 4: they divide by the large tile alone, and are wrong.
  test.each([
    [12, 6, [80, 20]],
    [18, 12, [69.23, 30.77]],
    [12, 4, [90, 10]],
    [8, 4, [80, 20]],
  ])('of two squares %i and %i are %o', (large, small, expected) => {
    const pattern = make('twoSquares', [module('large', large), module('small', small)]);
    expect(shares(pattern, large ** 2, small ** 2)).toEqual(expected);
  });

  test('of three sizes are 57.14, 28.57 and 14.29', () => {
    const tiles = [module('l', 16), module('m', 16, 8), module('s', 8)];
    expect(shares(make('threeSizes', tiles), 4, 2, 1)).toEqual([57.14, 28.57, 14.29]);
  });

  test('of four sizes are 33.3, 44.4, 11.1 and 11.1', () => {
    const tiles = [module('xl', 24, 16), module('l', 16), module('m', 16, 8), module('s', 8)];
    expect(shares(make('fourSizes', tiles), 6, 4, 2, 1)).toEqual([33.33, 44.44, 11.11, 11.11]);
  });

  test('of penny rounds 3/4 in with 1/16 in joints leave 22.7 to the joints', () => {
    const pattern = make(
      'pennyRound',
      [tileOf('field', inches(3 / 4), inches(3 / 4), { kind: 'round' })],
      1 / 16,
    );
    const covered = pattern.tiles.reduce((sum, { ring }) => sum + areaOf(ring), 0) / repeatArea(pattern);
    expect(covered).toBeCloseTo(0.773, 3);
  });
});

describe('sizes that close', () => {
  test('a windmill of 7 7/8 x 3 7/8 takes a square of 3 7/8', () => {
    expect(make('windmill', [tile('long', 7.875, 3.875), tile('middle', 3.875)]).closing).toBeUndefined();
    const smaller = make('windmill', [tile('long', 7.875, 3.875), tile('middle', 3.75)]).closing!;
    expect(smaller).toMatchObject({ tile: 'middle', needs: inches(3.875), most: inches(3 / 16) });
  });

  test('a true 4 x 8 basketweave with 1/8 in joints leaves joints out by 1/8 and needs 8 1/8', () => {
    const { closing } = make('basketweave', [tile('field', 8, 4)]);
    expect(closing).toMatchObject({ tile: 'field', side: 'length', has: 8 * IN, needs: inches(8.125) });
    expect(closing!.needs - closing!.has).toBe(inches(1 / 8));
    // In the middle of its place: half of the eighth at each end.
    expect([closing!.least, closing!.most]).toEqual([inches(1 / 8), inches(3 / 16)]);
    expect(make('basketweave', [tile('field', 8.125, 4)]).closing).toBeUndefined();
  });

  test('herringbone closes with any length, a true 4 x 8 as well', () => {
    expect(make('herringbone', [tile('field', 8, 4)]).closing).toBeUndefined();
  });

  test('a 16 in tile beside two of 8 in is one joint short', () => {
    const tiles = [tile('l', 16), tile('m', 16, 8), tile('s', 8)];
    expect(make('threeSizes', tiles).closing).toMatchObject({ has: 16 * IN, needs: inches(16.125) });
  });

  test('octagons of 4 in with corners of 1 in and 1/8 in joints take a dot of 1.341 in', () => {
    const octagon = tileOf('field', 4 * IN, 4 * IN, { kind: 'octagon', corner: IN });
    expect(make('octagonAndDot', [octagon, tile('dot', 1.341)]).closing).toBeUndefined();
    expect(make('octagonAndDot', [octagon, tile('dot', 1.25)]).closing!.needs / IN).toBeCloseTo(1.341, 3);
    // A larger dot pushes the octagons apart.
    expect(make('octagonAndDot', [octagon, tile('dot', 1.5)]).a[0]).toBeGreaterThan(inches(4.125));
  });
});

describe('what cannot be laid', () => {
  const problems = (
    name: PatternSpec['name'],
    tiles: readonly TileSpec[],
    joint: number,
    more: Partial<PatternSpec> = {},
  ) => {
    const { spec } = patternCase(name, tiles, 0, more);
    return patternProblems(makePattern(spec, tiles, inches(joint)), spec, tiles, 'inches');
  };

  test('is told with the size that would close', () => {
    expect(problems('basketweave', [tile('field', 7.5, 4)], 1 / 8)).toEqual([
      {
        code: 'patternOpen',
        figures: {
          tile: 'field',
          side: 'length',
          has: '7 1/2 in',
          needs: '8 1/8 in',
          joint: '1/8 in',
          most: '7/16 in',
        },
      },
    ]);
  });

  test('is not said of joints that vary to twice the joint at most', () => {
    expect(problems('basketweave', [tile('field', 8, 4)], 1 / 8)).toEqual([]);
  });

  const own = (second: [number, number], repeat: [number, number]) => ({
    own: {
      repeat: [repeat, [2, 1]] as const,
      places: [
        { tile: 'plank', at: [0, 0] as const, stands: false },
        { tile: 'chip', at: second, stands: false },
      ],
    },
  });
  const tiles = [module('plank', 16, 4), module('chip', 4)];

  test.each([
    ['nothing, where all fits', [4, 0], [5, 0], []],
    ['that tiles overlap', [3, 0], [5, 0], ['ownOverlaps']],
    ['that tiles of two repeats overlap', [4, 0], [4, 0], ['ownOverlaps']],
    ['that the repeat stays open', [4, 0], [6, 0], ['ownOpen']],
  ] as const)("of a pattern of the owner's own: %s", (_, second, repeat, expected) => {
    expect(problems('own', tiles, 1 / 8, own([...second], [...repeat])).map(({ code }) => code)).toEqual(
      expected,
    );
  });
});

describe('two colours', () => {
  const colours = { checker: ['white', 'black'] as const };
  const pair = (length: number, width = length) => [
    tile('white', length, width),
    tile('black', length, width),
  ];
  const colour = (pattern: Made, x: number, y: number) => {
    const { a, b } = pattern;
    return pattern.tiles.find(({ ring }) => {
      const [dx, dy] = [x - ring[0]![0], y - ring[0]![1]];
      const area = repeatArea(pattern);
      const [i, j] = [(dx * b[1] - dy * b[0]) / area, (dy * a[0] - dx * a[1]) / area];
      return Math.abs(i - Math.round(i)) + Math.abs(j - Math.round(j)) < 1e-9;
    })!.tile;
  };

  test('take turns along and across a straight lay', () => {
    const pattern = make('straight', pair(11.875), 1 / 8, { tile: 'white', ...colours });
    const at = (i: number, j: number) => colour(pattern, i * 12 * IN, j * 12 * IN);
    expect([at(0, 0), at(1, 0), at(0, 1), at(1, 1), at(3, 2)]).toEqual([
      'white',
      'black',
      'black',
      'white',
      'black',
    ]);
  });

  test('take turns along each course of a running bond, and from course to course', () => {
    const pattern = make('running', pair(11.875, 5.875), 1 / 8, { tile: 'white', ...colours });
    const at = (i: number, j: number) => colour(pattern, (i + (j % 2) / 2) * 12 * IN, j * 6 * IN);
    expect([at(0, 0), at(1, 0), at(0, 1), at(1, 1), at(0, 2)]).toEqual([
      'white',
      'black',
      'black',
      'white',
      'white',
    ]);
  });

  test('are those that lie and those that stand in herringbone', () => {
    const { tiles } = make('herringbone', pair(8, 4), 1 / 8, { tile: 'white', ...colours });
    expect(tiles.map(({ tile: key, quarter }) => [key, quarter])).toEqual([
      ['white', 0],
      ['black', 1],
    ]);
  });
});
