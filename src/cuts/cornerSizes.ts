import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { CutSize } from './Cut.ts';
import { axisOf, facing } from './edgeFacts.ts';
import { type Marking, measureFrom } from './measureFrom.ts';
import type { OutlineEdge, TileSide } from './Outline.ts';
import type { TileBox } from './TileBox.ts';

interface Where {
  readonly box: TileBox;
  readonly step: Ticks;
  readonly factory: ReadonlySet<TileSide>;
}

const OPPOSITE: Readonly<Record<TileSide, TileSide>> = {
  left: 'right',
  right: 'left',
  bottom: 'top',
  top: 'bottom',
};

/** A saw line that begins this near to a corner of the tile begins in it, in ticks: what rounding does. */
const IN_CORNER = 2;

/**
 * Sizes of a piece that is marked by its corners: what each sawn edge leaves of the sides of the tile (`leftLength` …), where
 * a near square edge stands, and both distances of a corner that lies inside the tile.
 *
 * @param convex all sawn edges are given by their ends; otherwise near square ones by where they stand.
 */
export function cornerSizes(
  edges: readonly OutlineEdge[],
  factory: ReadonlySet<TileSide>,
  box: TileBox,
  step: Ticks,
  convex: boolean,
): CutSize[] {
  const where = { box, step, factory };
  const oblique = (edge: OutlineEdge) => edge.what === 'sawn' && (convex || axisOf(edge) === 'oblique');
  return edges.flatMap((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length]!;
    const lines = edge.what === 'sawn' && !oblique(edge) ? lineSizes(edge, where) : [];
    const corner = oblique(edge) || oblique(before) ? vertexSizes(before, edge, where) : [];
    return [...corner, ...lines, ...curveSizes(edge, where)];
  });
}

/** Where the middle of a curve stands, both ways; of a near square one only the way it ends the piece. */
function curveSizes(edge: OutlineEdge, { box, step, factory }: Where): CutSize[] {
  const { from, to, via: at } = edge;
  if (!at) return [];
  const [nx, ny] = [Math.sign(to[1] - from[1]), Math.sign(from[0] - to[0])];
  const across = () =>
    measureFrom({ what: 'curveAcross', from: sideFrom(true, nx > 0, factory), at, away: nx }, box, step);
  const up = () =>
    measureFrom({ what: 'curveUp', from: sideFrom(false, ny > 0, factory), at, away: ny }, box, step);
  const axis = axisOf(edge);
  return axis === 'x' ? [across()] : axis === 'y' ? [up()] : [across(), up()];
}

/** Where a near square edge stands, from the side of the tile that is kept. */
function lineSizes(edge: OutlineEdge, { box, step, factory }: Where): CutSize[] {
  const isX = axisOf(edge) === 'x';
  const away = facing(edge);
  const from = sideFrom(isX, away > 0, factory);
  const what = isX ? 'cornerAcross' : 'cornerUp';
  const [first, last] = [edge.from, edge.to].map((at) => measureFrom({ what, from, at, away }, box, step));
  if (Math.abs(first!.saw - last!.saw) > step) return [first!, last!];
  // Kept sizes count at the shorter end, sizes of what is taken away at the longer.
  const kept = (from === 'left' || from === 'bottom') === away > 0;
  return [kept === last!.exact < first!.exact ? last! : first!];
}

/** A corner where an oblique edge ends: its place on a side of the tile, else its place both ways. */
function vertexSizes(before: OutlineEdge, after: OutlineEdge, where: Where): CutSize[] {
  const { box, step, factory } = where;
  const at = after.from;
  const left = before.on ? keptSide(before.on, true) : after.on ? keptSide(after.on, false) : undefined;
  if (left) return sideSizes({ ...left, at }, where);
  const [nx, ny] = outward(before, after);
  return [
    measureFrom({ what: 'cornerAcross', from: sideFrom(true, nx > 0, factory), at, away: nx }, box, step),
    measureFrom({ what: 'cornerUp', from: sideFrom(false, ny > 0, factory), at, away: ny }, box, step),
  ];
}

/**
 * What is left of a side from where it starts. Where no edge stays there, but one does at its other end, what is taken away from that: the first
 * cut may take the start. A saw line that begins in the tile's own corner has nothing to measure.
 */
function sideSizes(left: Marking, { box, step, factory }: Where): CutSize[] {
  const other = OPPOSITE[left.from];
  const across = left.from === 'left' || left.from === 'right';
  if (factory.has(left.from)) return [measureFrom(left, box, step)];
  const taken = measureFrom({ ...left, what: across ? 'takenAcross' : 'takenUp', from: other }, box, step);
  if (taken.exact <= IN_CORNER) return [];
  return [factory.has(other) ? taken : measureFrom(left, box, step)];
}

/** What is left of a side: from the corner of the tile where it starts (walked counter-clockwise), or from its end. */
function keptSide(on: TileSide, fromStart: boolean): { what: string; from: TileSide; away: number } {
  const what = `${on}Length`;
  const low = on === 'bottom' || on === 'right' ? fromStart : !fromStart;
  const sides: readonly TileSide[] = on === 'bottom' || on === 'top' ? ['left', 'right'] : ['bottom', 'top'];
  return { what, from: sides[low ? 0 : 1]!, away: low ? 1 : -1 };
}

function sideFrom(isX: boolean, keptLow: boolean, factory: ReadonlySet<TileSide>): TileSide {
  const [low, high]: readonly [TileSide, TileSide] = isX ? ['left', 'right'] : ['bottom', 'top'];
  const [kept, other] = keptLow ? [low, high] : [high, low];
  return factory.has(other) && !factory.has(kept) ? other : kept;
}

/** Sum of both edges' directions away from the piece; a part that cancels out is 0. */
function outward(before: OutlineEdge, after: OutlineEdge): Point {
  const sum = [before, after].map(({ from, to }) => {
    const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [(to[1] - from[1]) / size, (from[0] - to[0]) / size] as const;
  });
  const part = (axis: 0 | 1) => {
    const value = sum[0]![axis] + sum[1]![axis];
    return Math.abs(value) < 0.01 ? 0 : value;
  };
  return [part(0), part(1)];
}
