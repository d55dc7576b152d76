import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cut, CutSize } from './Cut.ts';
import { axisOf, facing } from './edgeFacts.ts';
import { keepSaw, measureFrom } from './measureFrom.ts';
import type { OutlineEdge, TileSide } from './Outline.ts';
import type { TileBox } from './TileBox.ts';

/** Sizes of one axis with the fence settings that follow from them. */
export interface Sized {
  readonly sizes: readonly CutSize[];
  readonly fences: Cut['fences'];
}

interface AxisWords {
  readonly axis: 'x' | 'y';
  readonly low: TileSide & Cut['fences'][number]['on'];
  readonly high: TileSide & Cut['fences'][number]['on'];
  readonly square: string;
  /** Size at the lower or left end of the edge, and at its other end. */
  readonly ends: readonly [string, string];
  /** Size at the middle of a curve. */
  readonly middle: string;
}

const ALONG: AxisWords = {
  axis: 'x',
  low: 'left',
  high: 'right',
  square: 'length',
  ends: ['bottomLength', 'topLength'],
  middle: 'middleLength',
};
const ACROSS: AxisWords = {
  axis: 'y',
  low: 'bottom',
  high: 'top',
  square: 'width',
  ends: ['leftLength', 'rightLength'],
  middle: 'middleLength',
};

/**
 * Length and width of a near rectangular piece where it is sawn: one size where both ends round to the same mark, else two; along a
 * curve both ends and the middle.
 *
 * @param outer edges of the outline without those of a pocket.
 */
export function outerSizes(outer: readonly OutlineEdge[], box: TileBox, step: Ticks): Sized {
  const both = [axisSizes(outer, ALONG, box, step), axisSizes(outer, ACROSS, box, step)];
  return { sizes: both.flatMap(({ sizes }) => sizes), fences: both.flatMap(({ fences }) => fences) };
}

function axisSizes(outer: readonly OutlineEdge[], words: AxisWords, box: TileBox, step: Ticks): Sized {
  const sawn = outer.filter((edge) => edge.what === 'sawn' && axisOf(edge) === words.axis);
  const [high, low] = [1, -1].map((way) =>
    endsOf(
      sawn.filter((edge) => facing(edge) === way),
      words.axis,
    ),
  );
  const curved = sawn.filter(({ via }) => via);
  if (high && low)
    return curved.length > 0 ? bothCurved(sawn, words, box, step) : between(low, high, words, step);
  const ends = high ?? low;
  if (!ends) return { sizes: [], fences: [] };
  const from = high ? words.low : words.high;
  const away = high ? 1 : -1;
  const measure = (what: string, at: Point) => measureFrom({ what, from, at, away }, box, step);
  const [first, last] = ends.map((at, i) => measure(words.ends[i]!, at));
  if (curved.length === 0) return oneOrTwo(first!, last!, words, from);
  return { sizes: [first!, ...curved.map(({ via }) => measure(words.middle, via!)), last!], fences: [] };
}

/** Sawn on both sides and curved: each side is marked by its own ends, and its middle, from the side of the tile that it faces away from. */
function bothCurved(sawn: readonly OutlineEdge[], words: AxisWords, box: TileBox, step: Ticks): Sized {
  const sizes = sawn.flatMap((edge) => {
    const away = facing(edge);
    const from = away > 0 ? words.low : words.high;
    const [first, last] = endsOf([edge], words.axis)!;
    const spots = [
      [words.ends[0], first],
      ...(edge.via ? [[words.middle, edge.via]] : []),
      [words.ends[1], last],
    ] as [string, Point][];
    return spots.map(([what, at]) => measureFrom({ what, from, at, away }, box, step));
  });
  return { sizes, fences: [] };
}

/** The lower or left, and the upper or right, end of a side of the piece. */
function endsOf(edges: readonly OutlineEdge[], axis: 'x' | 'y'): readonly [Point, Point] | undefined {
  if (edges.length === 0) return undefined;
  const across = axis === 'x' ? 1 : 0;
  const points = edges.flatMap(({ from, to }) => [from, to]).sort((a, b) => a[across] - b[across]);
  return [points[0]!, points[points.length - 1]!];
}

/** Sawn on both sides: only the size between them counts, and either edge may come from the factory. */
function between(
  low: readonly [Point, Point],
  high: readonly [Point, Point],
  words: AxisWords,
  step: Ticks,
): Sized {
  const axis = words.axis === 'x' ? 0 : 1;
  const [first, last] = [0, 1].map((i): CutSize => {
    const exact = high[i]![axis] - low[i]![axis];
    const end: Point = axis === 0 ? [high[i]![0], low[i]![1]] : [low[i]![0], high[i]![1]];
    return { what: words.ends[i]!, from: 'none', exact, saw: keepSaw(exact, step), at: [low[i]!, end] };
  });
  return oneOrTwo(first!, last!, words, words.low);
}

function oneOrTwo(first: CutSize, last: CutSize, words: AxisWords, on: AxisWords['low']): Sized {
  if (first.saw !== last.saw) return { sizes: [first, last], fences: [] };
  const less = last.exact < first.exact ? last : first;
  return { sizes: [{ ...less, what: words.square }], fences: [{ on, exact: less.exact, saw: less.saw }] };
}
