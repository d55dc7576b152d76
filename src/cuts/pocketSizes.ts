import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { CutSize } from './Cut.ts';
import { axisOf, facing } from './edgeFacts.ts';
import { measureFrom, takeSaw } from './measureFrom.ts';
import type { OutlineEdge, TileSide } from './Outline.ts';
import type { Sized } from './outerSizes.ts';
import type { TileBox } from './TileBox.ts';

/**
 * Sizes of the two edges of a corner notch. Width runs along x and depth along y, each from the tile's side on which the notch
 * opens, or, where that side is sawn away, the distance over what is kept.
 */
export function notchSizes(
  pocket: readonly OutlineEdge[],
  factory: ReadonlySet<TileSide>,
  box: TileBox,
  step: Ticks,
): Sized {
  return joined(pocket.map((edge) => lineSizes(edge, factory, box, step)));
}

/** Sizes of a pocket that is open at one side: where its nearer edge stands, its width along that side, its depth. */
export function uSizes(
  pocket: readonly OutlineEdge[],
  factory: ReadonlySet<TileSide>,
  box: TileBox,
  step: Ticks,
): Sized {
  const [one, floor, other] = [pocket[0]!, pocket[1]!, pocket[2]!];
  const low = facing(one) > 0 ? one : other;
  const high = low === one ? other : one;
  const axis = axisOf(low) === 'x' ? 0 : 1;
  const [near, far] = [extreme(low, axis, Math.min), extreme(high, axis, Math.max)];
  const fromLow = factory.has(axis === 0 ? 'left' : 'bottom') || !factory.has(axis === 0 ? 'right' : 'top');
  const what = axis === 0 ? 'notchAcross' : 'notchUp';
  const start = fromLow
    ? measureFrom({ what, from: axis === 0 ? 'left' : 'bottom', at: near, away: 1 }, box, step)
    : measureFrom({ what, from: axis === 0 ? 'right' : 'top', at: far, away: -1 }, box, step);
  const exact = far[axis] - near[axis];
  // What the first mark was rounded by is added, so that the pocket reaches its far edge from there.
  const saw = takeSaw(exact + (start.exact - start.saw), step);
  const width: CutSize = {
    what: 'notchWidth',
    from: 'none',
    exact,
    saw,
    at: [near, axis === 0 ? [far[0], near[1]] : [near[0], far[1]]],
  };
  const on = start.from as TileSide;
  const farFence = { on, exact: start.exact + exact, saw: start.saw + saw };
  const depth = lineSizes(floor, factory, box, step, 'notchDepth');
  return {
    sizes: [start, width, ...depth.sizes],
    fences: [{ on, exact: start.exact, saw: start.saw }, farFence, ...depth.fences],
  };
}

/** One edge of a pocket: one size where its ends round to the same mark or the next, else one at each end. */
function lineSizes(
  edge: OutlineEdge,
  factory: ReadonlySet<TileSide>,
  box: TileBox,
  step: Ticks,
  taken: string = axisOf(edge) === 'x' ? 'notchWidth' : 'notchDepth',
): Sized {
  const isX = axisOf(edge) === 'x';
  const away = facing(edge);
  const sides: readonly TileSide[] = isX ? ['left', 'right'] : ['bottom', 'top'];
  const open = sides[away > 0 ? 1 : 0]!;
  const fromOpen = factory.has(open);
  const from = fromOpen ? open : sides[away > 0 ? 0 : 1]!;
  const what = fromOpen ? taken : isX ? 'notchAcross' : 'notchUp';
  const [first, last] = [edge.from, edge.to].map((at) => measureFrom({ what, from, at, away }, box, step));
  // One step of taper along a pocket is left to its gap: the end that takes more away counts.
  if (Math.abs(first!.saw - last!.saw) > step) return { sizes: [first!, last!], fences: [] };
  const safe = fromOpen === last!.exact > first!.exact ? last! : first!;
  return { sizes: [safe], fences: [{ on: from, exact: safe.exact, saw: safe.saw }] };
}

function extreme(edge: OutlineEdge, axis: 0 | 1, pick: (a: number, b: number) => number): Point {
  return pick(edge.from[axis], edge.to[axis]) === edge.from[axis] ? edge.from : edge.to;
}

function joined(all: readonly Sized[]): Sized {
  return { sizes: all.flatMap(({ sizes }) => sizes), fences: all.flatMap(({ fences }) => fences) };
}
