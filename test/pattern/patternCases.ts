import fc from 'fast-check';
import type { PatternSpec, TileSpec } from '../../src/job/Job.ts';
import { tileOf } from './support/tileOf.ts';

/** A pattern with tiles that close at any joint. */
export interface PatternCase {
  readonly spec: PatternSpec;
  readonly tiles: readonly TileSpec[];
  readonly joint: number;
}

const side = (least: number, most: number) => fc.integer({ min: least, max: most });
const joint = fc.integer({ min: 400, max: 4000 });

const spec = (
  name: PatternSpec['name'],
  tiles: readonly TileSpec[],
  more: Partial<PatternSpec> = {},
): PatternSpec => ({
  name,
  tile: tiles[0]!.key,
  ...(tiles.length > 1 && { tiles: tiles.map(({ key }) => key) }),
  turnedDeg: 0,
  along: 'A-B',
  ...more,
});

type Sizes = (unit: number, joint: number, other: number) => readonly TileSpec[];

/** Tiles of a mix on one unit: each side so many units less one joint. */
const onUnit =
  (...sizes: readonly (readonly [number, number])[]): Sizes =>
  (u, j) =>
    sizes.map(([long, short]) => tileOf(`${long}x${short}`, long * u - j, short * u - j));

const oblong: Sizes = (u, _, other) => [tileOf('field', u + other, u)];

const lines: Readonly<Record<string, { readonly sizes: Sizes; readonly more?: Partial<PatternSpec> }>> = {
  straight: { sizes: oblong },
  running: { sizes: oblong, more: { offset: { numerator: 1, denominator: 3 } } },
  herringbone: { sizes: oblong, more: { group: 1 } },
  'herringbone double': { sizes: oblong, more: { group: 2 } },
  basketweave: { sizes: (u, j) => [tileOf('field', 2 * u + j, u)], more: { group: 2 } },
  'basketweave of three': { sizes: (u, j) => [tileOf('field', 3 * u + 2 * j, u)], more: { group: 3 } },
  twoSquares: { sizes: (u, _, other) => [tileOf('large', u + other, u + other), tileOf('small', u, u)] },
  windmill: {
    sizes: (u, j, other) => [tileOf('long', u + j + other, u), tileOf('middle', other, other)],
  },
  threeSizes: { sizes: onUnit([2, 2], [2, 1], [1, 1]) },
  fourSizes: { sizes: onUnit([3, 2], [2, 2], [2, 1], [1, 1]) },
  hexagon: { sizes: (u) => [tileOf('field', u, Math.round((u * 2) / Math.sqrt(3)), { kind: 'hexagon' })] },
  octagonAndDot: {
    sizes: (u, j, other) => {
      const corner = Math.round(u / 4 + other / 40);
      const dot = Math.round(Math.SQRT2 * corner - (2 - Math.SQRT2) * j);
      return [tileOf('field', u + other, u + other, { kind: 'octagon', corner }), tileOf('dot', dot, dot)];
    },
  },
  rhombus: { sizes: (u, _, other) => [tileOf('field', u + other, u, { kind: 'rhombus' })] },
  chevron: {
    sizes: (u, _, other) =>
      (['left', 'right'] as const).map((hand) =>
        tileOf(hand, u + other, u + other, { kind: 'chevron', rise: other, hand }),
      ),
  },
  own: {
    sizes: onUnit([4, 1], [1, 1]),
    more: {
      own: {
        repeat: [
          [5, 0],
          [2, 1],
        ],
        places: [
          { tile: '4x1', at: [0, 0], stands: false },
          { tile: '1x1', at: [4, 0], stands: false },
        ],
      },
    },
  },
};

/** Random sizes of every pattern whose joints can all be of one width, each under its name; its smallest tile so many ticks and more. */
export function patternCasesFrom(least: number): readonly (readonly [string, fc.Arbitrary<PatternCase>])[] {
  return Object.entries(lines).map(([name, { sizes, more }]) => [
    name,
    fc.tuple(side(least, 114000), joint, side(9000, 90000)).map(([u, j, other]) => {
      const tiles = sizes(u, j, other);
      return { spec: spec(name.split(' ')[0] as PatternSpec['name'], tiles, more), tiles, joint: j };
    }),
  ]);
}

export const patternCases = patternCasesFrom(16000);

/** One pattern with given tiles. */
export function patternCase(
  name: PatternSpec['name'],
  tiles: readonly TileSpec[],
  joint: number,
  more: Partial<PatternSpec> = {},
): PatternCase {
  return { spec: spec(name, tiles, more), tiles, joint };
}
