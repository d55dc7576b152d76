import type { Cut } from '../cuts/Cut.ts';
import { bounds, type Point, type Ring } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import { sawNearest, type Ticks } from '../measure/index.ts';
import { slideOf } from '../tiles/slideOf.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import type { SheetContext } from './SheetContext.ts';
import { type SidesLeft, sidesLeft } from './sidesLeft.ts';
import { turnedAndMoved } from './turnedAndMoved.ts';

/** Nearer to an edge of the tile than this, in ticks, is on it. */
const AT_EDGE = 32;

/** How far from which side of its tile a piece begins; `end` is the one short factory edge that an offcut has, whichever way it is turned. */
export interface StartWay {
  readonly side: 'left' | 'right' | 'bottom' | 'top' | 'end';
  readonly far: Ticks;
}

/** How far from which edge of its tile a piece begins, of each way in which it has no factory edge on a side of the tile. */
function startWays(
  outer: Ring,
  factory: readonly (readonly [Point, Point])[],
  { length, width }: Pick<TileSpec, 'length' | 'width'>,
  kept: SidesLeft,
): readonly StartWay[] {
  const own = bounds(outer);
  const lies = (axis: 0 | 1, end: Ticks) =>
    factory.some(
      (edge) =>
        edge.every((point) => [0, end].some((one) => isNear(point[axis]!, one))) &&
        isNear(edge[0]![axis]!, edge[1]![axis]!),
    );
  const of = (
    [low, high]: readonly [StartWay, StartWay],
    only: StartWay['side'] | undefined,
    end: boolean,
  ) => {
    if (only === undefined) return nearer(low, high);
    const { side, far } = low.side === only ? low : high;
    return { side: end ? ('end' as const) : side, far };
  };
  const [left, right] = [way('left', own.minX), way('right', length - own.maxX)];
  const [bottom, top] = [way('bottom', own.minY), way('top', width - own.maxY)];
  return [
    lies(0, length) ? undefined : of([left, right], kept.across, length > width),
    lies(1, width) ? undefined : of([bottom, top], kept.up, width > length),
  ].flatMap((one) => one ?? []);
}

const way = (side: StartWay['side'], far: Ticks): StartWay => ({ side, far: Math.round(far) });

/** In words how far from which edges a piece begins; empty where it begins at them. */
export function startSaid({ packet, say, length }: SheetContext, ways: readonly StartWay[]): string {
  const sizeOf = (far: Ticks) => length(sawNearest(far, packet.rounding.step));
  return ways
    .map(({ side, far }) =>
      say('sheet.tile-sheet.from', { side, at: far > AT_EDGE ? 'no' : 'yes', size: sizeOf(far) }),
    )
    .join(', ');
}

/**
 * Where in its tile a piece begins that lies elsewhere than its cut is drawn and has no factory edge on a side of the tile one way: how far
 * from which edge of the tile, as the tile sheet draws it. Of an offcut only an edge is told that its tile's larger pieces have left it.
 */
export function waysInTile(
  tile: TileSpec,
  cuts: readonly Cut[],
  { pieces }: Pick<CutTile, 'pieces'>,
  i: number,
): readonly StartWay[] {
  const { turn, at } = pieces[i]!;
  const cut = cuts[i]!;
  if (`${slideOf({ at, turn }, tile)}` === '0,0') return [];
  const place = (point: Point) => turnedAndMoved(point, turn, at);
  const factory = factoryOf(cut).map(([from, to]) => [place(from), place(to)] as const);
  return startWays(cut.shape.outer.map(place), factory, tile, sidesLeft(tile, cuts, pieces, i));
}

/** The same in words, a line a piece. */
export function startsInTile(
  context: SheetContext,
  key: string,
  cuts: readonly Cut[],
  one: Pick<CutTile, 'pieces'>,
): string[] {
  const tile = context.packet.spec.tiles.find((own) => own.key === key)!;
  return cuts.flatMap(({ number }, i) => {
    const from = startSaid(context, waysInTile(tile, cuts, one, i));
    return from === '' ? [] : [context.say('sheet.tile-sheet.starts', { number, from })];
  });
}

/** The factory edges of a cut by their ends. */
const factoryOf = ({ edges }: Pick<Cut, 'edges'>): readonly (readonly [Point, Point])[] =>
  edges.filter((edge) => edge.factory).map(({ from, to }) => [from, to] as const);

const isNear = (one: Ticks, other: Ticks) => Math.abs(one - other) <= AT_EDGE;

/** The edge from which a piece begins, the nearer one that it does not touch with a point, and how far off; undefined where it touches both. */
function nearer(...ways: readonly StartWay[]): StartWay | undefined {
  return ways.filter(({ far }) => far > AT_EDGE).sort((a, b) => a.far - b.far)[0];
}
