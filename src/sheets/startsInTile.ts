import type { Cut } from '../cuts/Cut.ts';
import { bounds, type Point, type Ring } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import { sawNearest, type Ticks } from '../measure/index.ts';
import { slideOf } from '../tiles/slideOf.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import type { SheetContext } from './SheetContext.ts';
import { turnedAndMoved } from './turnedAndMoved.ts';

/** Nearer to an edge of the tile than this, in ticks, is on it. */
const AT_EDGE = 32;

/** How far from which side of its tile a piece begins. */
export interface StartWay {
  readonly side: 'left' | 'right' | 'bottom' | 'top';
  readonly far: Ticks;
}

/** How far from which edge of its tile a piece begins, of each way in which it has no factory edge on a side of the tile. */
export function startWays(
  outer: Ring,
  factory: readonly (readonly [Point, Point])[],
  { length, width }: Pick<TileSpec, 'length' | 'width'>,
): readonly StartWay[] {
  const own = bounds(outer);
  const lies = (axis: 0 | 1, end: Ticks) =>
    factory.some(
      (edge) =>
        edge.every((point) => [0, end].some((one) => isNear(point[axis]!, one))) &&
        isNear(edge[0]![axis]!, edge[1]![axis]!),
    );
  return [
    lies(0, length) ? undefined : nearer('left', own.minX, 'right', length - own.maxX),
    lies(1, width) ? undefined : nearer('bottom', own.minY, 'top', width - own.maxY),
  ].flatMap((way) => way ?? []);
}

/** In words how far from which edges a piece begins; empty where it begins at them. */
export function startSaid({ packet, say, length }: SheetContext, ways: readonly StartWay[]): string {
  const sizeOf = (far: Ticks) => length(sawNearest(far, packet.rounding.step));
  return ways.map(({ side, far }) => say('sheet.tile-sheet.from', { side, size: sizeOf(far) })).join(', ');
}

/**
 * Where in its tile a piece begins that lies elsewhere than its cut is drawn and has no factory edge on a side of the tile one way: how far
 * from which edge of the tile, as the tile sheet draws it, a line a piece.
 */
export function startsInTile(
  context: SheetContext,
  key: string,
  cuts: readonly Cut[],
  { pieces }: CutTile,
): string[] {
  const tile = context.packet.spec.tiles.find((one) => one.key === key)!;
  return pieces.flatMap(({ turn, at }, i) => {
    const cut = cuts[i]!;
    if (`${slideOf({ at, turn }, tile)}` === '0,0') return [];
    const place = (point: Point) => turnedAndMoved(point, turn, at);
    const factory = factoryOf(cut).map(([from, to]) => [place(from), place(to)] as const);
    const from = startSaid(context, startWays(cut.shape.outer.map(place), factory, tile));
    return from === '' ? [] : [context.say('sheet.tile-sheet.starts', { number: cut.number, from })];
  });
}

/** The factory edges of a cut by their ends. */
export const factoryOf = ({ edges }: Pick<Cut, 'edges'>): readonly (readonly [Point, Point])[] =>
  edges.filter((edge) => edge.factory).map(({ from, to }) => [from, to] as const);

const isNear = (one: Ticks, other: Ticks) => Math.abs(one - other) <= AT_EDGE;

/** The edge from which a piece begins, the nearer one that it does not touch with a point, and how far off; undefined where it touches both. */
function nearer(low: StartWay['side'], toLow: Ticks, high: StartWay['side'], toHigh: Ticks) {
  const ways = [
    { side: low, far: Math.round(toLow) },
    { side: high, far: Math.round(toHigh) },
  ];
  return ways.filter(({ far }) => far > AT_EDGE).sort((a, b) => a.far - b.far)[0];
}
