import { type Point, type Ring, side } from '../geometry/index.ts';
import { arcsOf } from './arcsOf.ts';
import { bendsOf } from './bendsOf.ts';
import type { OutlineEdge, TileSide } from './Outline.ts';
import { type Corner, straighten } from './straighten.ts';
import type { OwnPiece, TileBox } from './TileBox.ts';
import { withoutJogs } from './withoutJogs.ts';

/** A sawn edge this close to a side of the tile is that side: what is left of rounding. */
const ON_SIDE = 2;

/**
 * The outer edges of a piece in its tile's own axes, bends under `tolerance` ticks straightened and each told apart: factory
 * where it lies on a side of the tile (also where that side meets a wall), arc where a circle cuts it, else sawn. Along a curved wall
 * it is straight where it bulges by no more than `flat` ticks, and past a jog of no more than `jog` where its gaps have that to spare.
 */
export function outlineOf(piece: OwnPiece, tolerance: number, flat: number, jog = 0): OutlineEdge[] {
  const onSide = onSideOf(piece.box);
  const corners = straighten(cornersOf(piece, flat), tolerance, onSide);
  const limits = { most: jog, loose: piece.loose ?? 0 };
  return edgesOf(withoutJogs(corners, limits, onSide), piece.box);
}

const onSideOf = (box: TileBox) => (from: Point, to: Point) =>
  box.ring ? onRing(from, to, box.ring) : sideOf(from, to, box) !== undefined;

/** Whether an edge lies along a side of a tile that is no rectangle. */
function onRing(from: Point, to: Point, ring: Ring): boolean {
  return ring.some((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    return [from, to].every((point) => Math.abs(side(p, q, point)) <= ON_SIDE * length);
  });
}

function cornersOf({ shape, circles, curves, box }: OwnPiece, flat: number): readonly Corner[] {
  return bendsOf(arcsOf(shape.outer, circles), curves, flat, onSideOf(box));
}

/**
 * The same without its arcs, as if no circle cut it: the edges on both sides of an arc are drawn on until they meet. An arc
 * stays as a straight chord where they do not meet inside the tile.
 */
export function filledOutlineOf(piece: OwnPiece, tolerance: number, flat: number): OutlineEdge[] {
  const onSide = onSideOf(piece.box);
  const corners = straighten(cornersOf(piece, flat), tolerance, onSide);
  if (corners.every(({ arc }) => arc === undefined)) return edgesOf(corners, piece.box);
  return edgesOf(straighten(fill(corners, piece.box), tolerance, onSide), piece.box);
}

function edgesOf(corners: readonly Corner[], box: TileBox): OutlineEdge[] {
  return corners.map(({ at: from, arc, via }, i): OutlineEdge => {
    const to = corners[(i + 1) % corners.length]!.at;
    if (arc !== undefined) return { from, to, what: 'arc', circle: arc };
    if (via) return { from, to, what: 'sawn', via };
    if (box.ring && !onRing(from, to, box.ring)) return { from, to, what: 'sawn' };
    const on = sideOf(from, to, box);
    if (box.ring && !on) return { from, to, what: 'factory' };
    return on ? { from, to, what: 'factory', on } : { from, to, what: 'sawn' };
  });
}

function sideOf(from: Point, to: Point, box: TileBox): TileSide | undefined {
  if (bothNear(from[0], to[0], 0)) return 'left';
  if (bothNear(from[0], to[0], box.length)) return 'right';
  if (bothNear(from[1], to[1], 0)) return 'bottom';
  return bothNear(from[1], to[1], box.width) ? 'top' : undefined;
}

function bothNear(one: number, other: number, at: number): boolean {
  return Math.abs(one - at) <= ON_SIDE && Math.abs(other - at) <= ON_SIDE;
}

function fill(corners: readonly Corner[], box: TileBox): Corner[] {
  const n = corners.length;
  const at = (i: number) => corners[(i + n) % n]!;
  return corners.flatMap((corner, i): Corner[] => {
    const starts = corner.arc !== undefined;
    const ends = at(i - 1).arc !== undefined;
    if (!starts && !ends) return [corner];
    const k = starts ? i : i - 1;
    const alone = at(k - 1).arc === undefined && at(k + 1).arc === undefined;
    const meet = alone && meetingPoint([at(k - 1).at, at(k).at, at(k + 1).at, at(k + 2).at], box);
    if (!meet) return [corner];
    return starts && meet !== 'oneLine' ? [{ at: meet }] : [];
  });
}

/** Where a-b drawn on past b meets d-c drawn on past c; `oneLine` where both are the same line. */
function meetingPoint([a, b, c, d]: Ring, box: TileBox): Point | 'oneLine' | undefined {
  const [p, q, r, s] = [a!, b!, c!, d!];
  const along = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const off = (point: Point) => side(p, q, point) / along;
  if (Math.abs(off(r)) <= ON_SIDE && Math.abs(off(s)) <= ON_SIDE) return 'oneLine';
  const t = off(r) / (off(r) - off(s));
  if (!Number.isFinite(t) || t > 0) return undefined;
  const meet: Point = [Math.round(r[0] + t * (s[0] - r[0])), Math.round(r[1] + t * (s[1] - r[1]))];
  const ahead = (meet[0] - q[0]) * (q[0] - p[0]) + (meet[1] - q[1]) * (q[1] - p[1]) >= 0;
  const inside =
    Math.min(meet[0], meet[1]) >= -ON_SIDE &&
    meet[0] <= box.length + ON_SIDE &&
    meet[1] <= box.width + ON_SIDE;
  return ahead && inside ? meet : undefined;
}
