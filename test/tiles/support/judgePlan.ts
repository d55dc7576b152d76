import type { Cut, Cuts } from '../../../src/cuts/Cut.ts';
import {
  convexHull,
  distancePointSegment,
  distanceShapes,
  type Point,
  pointInRing,
  type Ring,
  type Shape,
} from '../../../src/geometry/index.ts';
import type { TileSpec } from '../../../src/job/Job.ts';
import type { Layout, Piece } from '../../../src/layout/Layout.ts';
import type { TilePlan } from '../../../src/tiles/TilePlan.ts';
import { keptOffcut, sawLines } from './keptOffcut.ts';

/** What a plan must keep to: the blade, the narrowest offcut that is kept, the saw step, and how the tile may be turned. */
export interface Rules {
  readonly kerf: number;
  readonly narrowest: number;
  readonly step: number;
  readonly turns: TileSpec['turns'];
}

/**
 * Cuts the tiles of a plan up again and says what is wrong: a piece missing or served twice, outside its tile, nearer to another
 * than the kerf, turned as its tile may not be, not the shape that the sheet shows there (nor its mirror image), a joint edge of
 * the piece that is not on the tile's side, pieces that no saw line right across parts, an offcut too narrow to be kept that is
 * used, or a bound over the plan.
 */
export function judgePlan(
  layout: Pick<Layout, 'pieces'>,
  { cuts }: Pick<Cuts, 'cuts'>,
  plan: TilePlan,
  { kerf, narrowest, step, turns }: Rules,
): string[] {
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
      const shape = lay(own, cutOf.get(cut)!, at, turn);
      return {
        piece,
        size: sizeOf(own),
        outline: outlineOf(own),
        slanted: own.fullTile.length > 4,
        shape,
        own: own.shape.outer.map((point) => toTile(point, own)),
        // How the tile is turned from where it lies in the room: what its grain or arrow goes by.
        turned: (turn - turnsBack(own, cutOf.get(cut)!) + 360) % 360,
        shown: cutOf.get(cut)!.shape.outer.map((point): Point => {
          const [x, y] = turnedBy(point, turn);
          return [x + at[0], y + at[1]];
        }),
      };
    });
    return [
      ...laid.flatMap(({ piece, outline, shape, own }) =>
        sidesHeld(own, shape.outer, outline) ? [] : [`a joint edge of ${piece} is sawn`],
      ),
      ...laid.flatMap(({ piece, turned, outline }) =>
        mayTurn(turned, turns, outline) ? [] : [`${piece} is turned by ${turned}`],
      ),
      ...laid.flatMap(({ piece, shape, shown, slanted }) =>
        alike(shape.outer, shown, step + 8, slanted ? 2 : 1)
          ? []
          : [`${piece} is shown otherwise in ${tile}`],
      ),
      ...laid.flatMap((a) =>
        laid.flatMap((b) =>
          a === b || keptOffcut(sawLines(a.shape.outer, a.outline, kerf), b.shape.outer, { kerf, narrowest })
            ? []
            : [`the offcut for ${b.piece} beside ${a.piece} is not kept`],
        ),
      ),
      ...(canSaw(
        laid.map(({ shape }) => convexHull(shape.outer)),
        kerf,
      )
        ? []
        : [`no saw parts ${tile}`]),
      ...laid.flatMap(({ piece, outline, shape }) =>
        inside(shape, outline) ? [] : [`${piece} leaves ${tile}`],
      ),
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
  const back = turnsBack(piece, cut);
  const place = (point: Point): Point => {
    const own = toTile(point, piece);
    const upright = spun([own[0] - length / 2, own[1] - width / 2], (4 - back / 90) % 4);
    const turned = turnedBy([upright[0] + length / 2, upright[1] + width / 2], turn);
    return [turned[0] + at[0], turned[1] + at[1]];
  };
  return { outer: piece.shape.outer.map(place), holes: piece.shape.holes.map((hole) => hole.map(place)) };
}

function turnsBack(piece: Piece, cut: Cut): number {
  return cut.turns![cut.pieces.indexOf(piece.id)]!;
}

/** The tile's own outline in its own axes. */
export function outlineOf(piece: Piece): Ring {
  return piece.fullTile.map((corner) => toTile(corner, piece));
}

/** Corners of a tile that is no rectangle are rounded to ticks, and once more when it is turned. */
const roundedBy = (outline: Ring): number => (outline.length === 4 && isUpright(outline) ? 1 : 3);

const isUpright = (outline: Ring): boolean =>
  outline.every(([x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length]!;
    return Math.min(Math.abs(nx - x), Math.abs(ny - y)) <= 1;
  });

/** Whether a tile that is turned about its middle lies on itself, and may be turned so. */
export function mayTurn(turned: number, turns: TileSpec['turns'], outline: Ring): boolean {
  if (turned === 0) return true;
  if (turns === 'none' || (turns === 'half' && turned !== 180)) return false;
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const middle: Point = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
  return outline.every(([x, y]) => {
    const [u, v] = turnedBy([x - middle[0], y - middle[1]], turned);
    return outline.some(([p, q]) => Math.hypot(u + middle[0] - p, v + middle[1] - q) <= roundedBy(outline));
  });
}

/**
 * Whether two outlines lie on one another, to so many ticks: cuts under one number differ by less than a saw step. Where tiles are
 * slanted (`tip` 2) the tip between a cut and a side that meet at 30 degrees moves twice as far as the cut.
 */
function alike(one: Ring, other: Ring, most: number, tip: 1 | 2): boolean {
  const on = (point: Point, ring: Ring, far: number) =>
    ring.some((from, i) => distancePointSegment(point, from, ring[(i + 1) % ring.length]!) <= far);
  const lies = (ring: Ring, beside: Ring) =>
    ring.every((from, i) => {
      const to = ring[(i + 1) % ring.length]!;
      const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      return on(from, beside, tip * most) && on(middle, beside, most);
    });
  return lies(one, other) && lies(other, one);
}

/** Whether every edge of 1/64 in or more that lies on the tile's side where the piece is laid lies on one where it is sawn. */
function sidesHeld(own: Ring, laid: Ring, outline: Ring): boolean {
  const next = (ring: Ring, i: number) => ring[(i + 1) % ring.length]!;
  const onSide = (most: number, ...ends: readonly Point[]) =>
    outline.some((from, i) => ends.every((end) => distancePointSegment(end, from, next(outline, i)) <= most));
  return own.every(
    (from, i) =>
      !isEdge(from, next(own, i)) ||
      !onSide(1, from, next(own, i)) ||
      onSide(roundedBy(outline), laid[i]!, next(laid, i)),
  );
}

/** What is shorter than 1/64 in is the tip of a corner. */
export function isEdge(from: Point, to: Point): boolean {
  return Math.hypot(to[0] - from[0], to[1] - from[1]) >= 127;
}

/** Whether lines right across, along some edge, along or square to a line between two corners, part the pieces one from another. */
export function canSaw(rings: readonly Ring[], kerf: number): boolean {
  if (rings.length < 2) return true;
  const normals = rings.flatMap((ring) =>
    ring.map(([x, y], i): Point => {
      const [nx, ny] = ring[(i + 1) % ring.length]!;
      return unit([ny - y, x - nx]);
    }),
  );
  const between = rings.flatMap((ring) =>
    rings.flatMap((other) =>
      other === ring
        ? []
        : ring.flatMap(([x, y]) =>
            other.flatMap(([ox, oy]) => [unit([ox - x, oy - y]), unit([oy - y, x - ox])]),
          ),
    ),
  );
  return [...normals, ...between].some(([nx, ny]) => {
    const spans = rings
      .map((ring) => ({ ring, out: ring.map(([x, y]) => x * nx + y * ny) }))
      .map(({ ring, out }) => ({ ring, least: Math.min(...out), most: Math.max(...out) }))
      .sort((a, b) => a.least - b.least);
    return spans.some((_, i) => {
      const [near, far] = [spans.slice(0, i), spans.slice(i)];
      if (i === 0 || far[0]!.least - Math.max(...near.map(({ most }) => most)) < kerf - 1e-6) return false;
      return canSaw(near.map(({ ring }) => ring), kerf) && canSaw(far.map(({ ring }) => ring), kerf); // biome-ignore format: both sides on a line
    });
  });
}

function unit([x, y]: Point): Point {
  const length = Math.hypot(x, y) || 1;
  return [x / length, y / length];
}

export function toTile(point: Point, piece: Piece): Point {
  const undo = (one: Point) => spun(level(one, piece), (4 - piece.quarter) % 4);
  const corners = piece.fullTile.map(undo);
  const [x, y] = undo(point);
  return [x - Math.min(...corners.map((c) => c[0])), y - Math.min(...corners.map((c) => c[1]))];
}

/** A point with what its tile is turned by beyond quarter turns undone. */
function level([x, y]: Point, { slantDeg = 0 }: Pick<Piece, 'slantDeg'>): Point {
  const [cos, sin] = [Math.cos((slantDeg * Math.PI) / 180), Math.sin((slantDeg * Math.PI) / 180)];
  return slantDeg === 0 ? [x, y] : [x * cos + y * sin, y * cos - x * sin];
}

export function spun([x, y]: Point, quarters: number): Point {
  let point: Point = [x, y];
  for (let i = 0; i < quarters; i++) point = [-point[1], point[0]];
  return point;
}

function inside(shape: Shape, outline: Ring): boolean {
  // A corner where the wall crosses a joint is rounded to ticks, and so may lie one off.
  return shape.outer.every(
    (point) =>
      pointInRing(point, outline) ||
      outline.some(
        (from, i) =>
          distancePointSegment(point, from, outline[(i + 1) % outline.length]!) <= roundedBy(outline),
      ),
  );
}

/** A point turned counter-clockwise about the origin by some degrees; quarter turns are exact. */
export function turnedBy([x, y]: Point, degrees: number): Point {
  if (degrees % 90 === 0) return spun([x, y], degrees / 90);
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return [x * cos - y * sin, x * sin + y * cos];
}

export function sizeOf({ fullTile, quarter, slantDeg = 0 }: Piece): Point {
  const corners = fullTile.map((corner) => level(corner, { slantDeg }));
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const size: Point = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  return quarter % 2 === 0 ? size : [size[1], size[0]];
}
