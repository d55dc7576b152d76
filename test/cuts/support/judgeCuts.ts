import type { Cut, CutSize, Cuts } from '../../../src/cuts/Cut.ts';
import { type Point, type Ring, type Shape, shapeArea, subtract } from '../../../src/geometry/index.ts';
import type { Layout, Piece } from '../../../src/layout/Layout.ts';

/** Lays every cut back on the tiles it came from, and says what does not fit. An empty list is a pass. */
export function judgeCuts(layout: Layout, { cuts }: Cuts, step: number): string[] {
  const byId = new Map(layout.pieces.map((piece) => [piece.id, piece]));
  const served = cuts.flatMap(({ pieces }) => pieces).sort();
  const wanted = layout.pieces
    .filter(({ whole }) => !whole)
    .map(({ id }) => id)
    .sort();
  return [
    ...(JSON.stringify(served) === JSON.stringify(wanted)
      ? []
      : [`pieces served ${served} but wanted ${wanted}`]),
    ...(cuts.every(({ number }, i) => number === i + 1) ? [] : ['numbers do not run from 1']),
    ...cuts.flatMap((cut) => cut.pieces.flatMap((id, i) => judgePiece(cut, byId.get(id)!, i, step))),
    ...cuts.flatMap((cut) => judgeEdges(cut, byId.get(cut.pieces[0]!)!)),
    ...cuts.flatMap((cut) => cut.sizes.flatMap((size) => judgeSize(cut, size, step))),
  ];
}

/** The cut's shape on the tile of one of its pieces, turned about the middle of the tile. */
export function placeOnTile(cut: Cut, piece: Piece, turn: number): Shape {
  const quarters = (piece.quarter + turn / 90) % 4;
  const slant = ((piece.slantDeg ?? 0) * Math.PI) / 180;
  const [mx, my] = middle(piece.fullTile);
  const [l, w] = tileSize(piece);
  const [cx, cy] = turn % 180 === 0 ? [l / 2, w / 2] : [w / 2, l / 2];
  const place = ([x, y]: Point): Point => {
    let [u, v] = [x - cx, y - cy];
    for (let i = 0; i < quarters; i++) [u, v] = [-v, u];
    if (slant === 0) return [u + mx, v + my];
    const [cos, sin] = [Math.cos(slant), Math.sin(slant)];
    return [Math.round(u * cos - v * sin + mx), Math.round(u * sin + v * cos + my)];
  };
  return { outer: cut.shape.outer.map(place), holes: cut.shape.holes.map((hole) => hole.map(place)) };
}

function judgePiece(cut: Cut, piece: Piece, i: number, step: number): string[] {
  const placed = placeOnTile(cut, piece, cut.turns![i]!);
  const ring = piece.shape.outer;
  const around = ring.reduce(
    (sum, p, k) =>
      sum + Math.hypot(p[0] - ring[(k + 1) % ring.length]![0], p[1] - ring[(k + 1) % ring.length]![1]),
    0,
  );
  const off = [...subtract([placed], [piece.shape]), ...subtract([piece.shape], [placed])].reduce(
    (sum, shape) => sum + shapeArea(shape),
    0,
  );
  // The first piece is the shape itself; the others may differ by what rounding to the saw's step hides.
  // Where the tile lies aslant, its shape was rounded to ticks once more.
  const allowed = i === 0 ? (piece.slantDeg ? 2 * around : 0) : (step + 4) * around;
  return off > allowed ? [`${piece.id} is not cut ${cut.number}: off by ${off} of ${allowed}`] : [];
}

function judgeEdges({ number, edges }: Cut, piece: Piece): string[] {
  const sides = sidesOf(piece);
  const onSide = (point: Point) => sides.map((offOf) => Math.abs(offOf(point)) <= 2);
  return edges.flatMap(({ from, to, factory, via = from }) => {
    const [a, b, middle] = [onSide(from), onSide(to), onSide(via)];
    // A bent edge may begin and end at one side of the tile and still leave it between.
    const lies = a.some((on, i) => on && b[i] && middle[i]);
    return lies === factory ? [] : [`edge ${from} to ${to} of cut ${number}: factory ${factory}`];
  });
}

const TAKEN = new Set(['takenAcross', 'takenUp', 'notchWidth', 'notchDepth', 'holeDiameter']);
const KEPT = new Set(['length', 'width', 'leftLength', 'rightLength', 'topLength', 'bottomLength']);
const CENTRE = new Set(['holeAcross', 'holeUp']);

/** What is kept rounds down, what is taken away rounds up, centres go to the nearest; two ticks are allowed for rounding twice. */
function judgeSize({ number }: Cut, { what, from, exact, saw, at }: CutSize, step: number): string[] {
  const off = saw - exact;
  const span = Math.max(Math.abs(at[0][0] - at[1][0]), Math.abs(at[0][1] - at[1][1]));
  const fits =
    (!TAKEN.has(what) || off >= -2) &&
    (!KEPT.has(what) || off <= 2) &&
    (!CENTRE.has(what) || 2 * Math.abs(off) <= step);
  const close = Math.abs(off) < step + 2 || (TAKEN.has(what) && from === 'none' && off < 2 * step + 2);
  const good = fits && close && saw % step === 0 && Math.abs(Math.abs(exact) - span) <= 1;
  return good
    ? []
    : [`size ${what} from ${from} of cut ${number}: exact ${exact}, saw ${saw}, drawn ${span}`];
}

/** The tile's ring in its own axes, its box at the origin; plainly turned back. */
function ownRing({ fullTile, quarter, slantDeg = 0 }: Piece): Ring {
  const back = -((quarter * 90 + slantDeg) * Math.PI) / 180;
  const turned = fullTile.map(([x, y]): Point => {
    return [x * Math.cos(back) - y * Math.sin(back), x * Math.sin(back) + y * Math.cos(back)];
  });
  const [minX, minY] = [Math.min(...turned.map(([x]) => x)), Math.min(...turned.map(([, y]) => y))];
  return turned.map(([x, y]): Point => [x - minX, y - minY]);
}

/** How far a point lies off each side of the tile. */
function sidesOf(piece: Piece): ((point: Point) => number)[] {
  const ring = ownRing(piece);
  return ring.map(([px, py], i) => {
    const [qx, qy] = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(qx - px, qy - py);
    return ([x, y]) => ((qx - px) * (y - py) - (qy - py) * (x - px)) / length;
  });
}

function tileSize(piece: Piece): Point {
  const ring = ownRing(piece);
  return [Math.round(Math.max(...ring.map(([x]) => x))), Math.round(Math.max(...ring.map(([, y]) => y)))];
}

function middle(ring: Ring): Point {
  const sum = ring.reduce<Point>(([a, b], [x, y]) => [a + x, b + y], [0, 0]);
  return [sum[0] / ring.length, sum[1] / ring.length];
}
