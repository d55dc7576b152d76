import type { Cut, Cuts } from '../../src/cuts/Cut.ts';
import { distanceShapes, type Point, type Shape } from '../../src/geometry/index.ts';
import type { Layout, Piece } from '../../src/layout/Layout.ts';
import type { TilePlan } from '../../src/tiles/TilePlan.ts';

/**
 * Cuts the tiles of a plan up again and says what is wrong: a piece missing or served twice, outside its tile, nearer to another
 * than the kerf, a factory edge of the piece that is not on the tile's side, or a bound over the plan.
 */
export function judgePlan(layout: Layout, { cuts }: Cuts, plan: TilePlan, kerf: number): string[] {
  const pieceOf = new Map(layout.pieces.map((piece) => [piece.id, piece]));
  const cutOf = new Map(cuts.map((cut) => [cut.number, cut]));
  const served = plan.from.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)).sort();
  const wanted = layout.pieces
    .filter(({ whole }) => !whole)
    .map(({ id }) => id)
    .sort();
  const faults = plan.from.flatMap(({ tile, pieces }) => {
    const laid = pieces.map(({ piece, cut, at, turn }) => {
      const own = pieceOf.get(piece)!;
      return { piece, size: sizeOf(own), shape: lay(own, cutOf.get(cut)!, at, turn) };
    });
    return [
      ...laid.flatMap(({ piece, size, shape }) => (inside(shape, size) ? [] : [`${piece} leaves ${tile}`])),
      ...laid.flatMap((a, i) =>
        laid
          .slice(i + 1)
          .flatMap((b) =>
            distanceShapes(a.shape, b.shape) < kerf - 1e-6 ? [`${a.piece} too near ${b.piece}`] : [],
          ),
      ),
    ];
  });
  return [
    ...faults,
    ...(JSON.stringify(served) === JSON.stringify(wanted) ? [] : ['pieces are not each served once']),
    ...(plan.bound <= plan.needed && plan.needed === plan.whole + plan.from.length
      ? []
      : [`bound ${plan.bound} over ${plan.needed}`]),
  ];
}

/** The piece itself, exact: from the room to its tile's axes, from there to the cut's axes, and then as the plan says. */
function lay(piece: Piece, cut: Cut, at: Point, turn: number): Shape {
  const [length, width] = sizeOf(piece);
  const back = cut.turns![cut.pieces.indexOf(piece.id)]!;
  const place = (point: Point): Point => {
    const own = toTile(point, piece);
    const upright = spun([own[0] - length / 2, own[1] - width / 2], (4 - back / 90) % 4);
    const turned = spun([upright[0] + length / 2, upright[1] + width / 2], turn / 90);
    return [turned[0] + at[0], turned[1] + at[1]];
  };
  return { outer: piece.shape.outer.map(place), holes: piece.shape.holes.map((hole) => hole.map(place)) };
}

function toTile(point: Point, piece: Piece): Point {
  const corners = piece.fullTile.map((corner) => spun(corner, (4 - piece.quarter) % 4));
  const [x, y] = spun(point, (4 - piece.quarter) % 4);
  return [x - Math.min(...corners.map((c) => c[0])), y - Math.min(...corners.map((c) => c[1]))];
}

function spun([x, y]: Point, quarters: number): Point {
  let point: Point = [x, y];
  for (let i = 0; i < quarters; i++) point = [-point[1], point[0]];
  return point;
}

function inside(shape: Shape, [length, width]: Point): boolean {
  // A corner where the wall crosses a joint is rounded to ticks, and so may lie one off.
  return shape.outer.every(([x, y]) => x >= -1 && y >= -1 && x <= length + 1 && y <= width + 1);
}

function sizeOf({ fullTile, quarter }: Piece): Point {
  const xs = fullTile.map(([x]) => x);
  const ys = fullTile.map(([, y]) => y);
  const size: Point = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  return quarter % 2 === 0 ? size : [size[1], size[0]];
}
