import type { Cut } from '../cuts/Cut.ts';
import { bounds, type Point } from '../geometry/index.ts';
import { sawNearest, type Ticks } from '../measure/index.ts';
import { slideOf } from '../tiles/slideOf.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import type { SheetContext } from './SheetContext.ts';
import { turnedAndMoved } from './turnedAndMoved.ts';

/** Nearer to an edge of the tile than this, in ticks, is on it. */
const AT_EDGE = 32;

/**
 * Where in its tile a piece begins that lies elsewhere than its cut is drawn and has no factory edge on a side of the tile one way: how far
 * from which edge of the tile, as the tile sheet draws it, a line a piece.
 */
export function startsInTile(
  { packet, say, length }: SheetContext,
  key: string,
  cuts: readonly Cut[],
  { pieces }: CutTile,
): string[] {
  const tile = packet.spec.tiles.find((one) => one.key === key)!;
  return pieces.flatMap(({ turn, at }, i) => {
    const cut = cuts[i]!;
    if (`${slideOf({ at, turn }, tile)}` === '0,0') return [];
    const place = (point: Point) => turnedAndMoved(point, turn, at);
    const own = bounds(cut.shape.outer.map(place));
    const factory = cut.edges.filter((edge) => edge.factory).map(({ from, to }) => [place(from), place(to)]);
    const lies = (axis: 0 | 1, end: Ticks) =>
      factory.some(
        (edge) =>
          edge.every((point) => [0, end].some((one) => isNear(point[axis]!, one))) &&
          isNear(edge[0]![axis]!, edge[1]![axis]!),
      );
    const ways = [
      lies(0, tile.length) ? undefined : nearer('left', own.minX, 'right', tile.length - own.maxX),
      lies(1, tile.width) ? undefined : nearer('bottom', own.minY, 'top', tile.width - own.maxY),
    ];
    const told = ways.flatMap((one) =>
      one
        ? [
            say('sheet.tile-sheet.from', {
              side: one.side,
              size: length(sawNearest(one.far, packet.rounding.step)),
            }),
          ]
        : [],
    );
    return told.length > 0
      ? [say('sheet.tile-sheet.starts', { number: cut.number, from: told.join(', ') })]
      : [];
  });
}

const isNear = (one: Ticks, other: Ticks) => Math.abs(one - other) <= AT_EDGE;

/** The edge from which a piece begins, the nearer one that it does not touch with a point, and how far off; undefined where it touches both. */
function nearer(low: string, toLow: Ticks, high: string, toHigh: Ticks) {
  const ways = [
    { side: low, far: Math.round(toLow) },
    { side: high, far: Math.round(toHigh) },
  ];
  return ways.filter(({ far }) => far > AT_EDGE).sort((a, b) => a.far - b.far)[0];
}
