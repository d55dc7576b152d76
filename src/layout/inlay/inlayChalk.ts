import { bounds, lineThroughShape, type Point, type Ring, rotate } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import { inTicks } from '../border/offsetLine.ts';
import { courseOrigin } from '../chalk/courseOrigin.ts';
import { firstTileOf } from '../chalk/firstTile.ts';
import { jointsOn } from '../chalk/jointsOn.ts';
import { zigzagNear } from '../chalk/zigzagNear.ts';
import type { ChalkLine, Piece } from '../Layout.ts';
import type { InlayChalk, InlayLine } from './Inlay.ts';
import { type InlaySide, markOnSide } from './inlaySides.ts';

/** An inlay's pattern as it lies, in that pattern's own frame, and where that frame lies in the floor's. */
export interface InlayQuestion {
  /** Its pattern without colors. */
  readonly pattern: Pattern;
  readonly origin: Point;
  /** What its pattern lies on. */
  readonly outline: Ring;
  readonly pieces: readonly Piece[];
  /** Radians that turn it into the floor's frame, about the origin, which then goes to this place. */
  readonly turn: number;
  readonly at: Point;
  /** Its edge in the floor's frame, and the sides of it. */
  readonly ring: Ring;
  readonly sides: readonly InlaySide[];
}

/**
 * One line each way on the joint of an inlay's pattern that is nearest to its middle, and where tiles lie in zigzag the nearest one along
 * it. They are snapped between marks on the inlay's own edge and not run on past it, so however short they are they lie as true as
 * their marks. Undefined where no joint runs through the inlay.
 */
export function inlayChalk(question: InlayQuestion): InlayChalk | undefined {
  const { pattern, origin, outline, pieces } = question;
  const { minX, minY, maxX, maxY } = bounds(outline);
  const middle: Point = [Math.round((minX + maxX) / 2), Math.round((minY + maxY) / 2)];
  const upright = nearest(0, middle, courseOrigin({ pattern, origin, middle }), question);
  const level = nearest(1, middle, origin, question);
  if (upright === undefined || level === undefined) return undefined;
  const crossing: Point = [upright, level];
  const zigzag = zigzagNear(pattern, origin, middle);
  const ways: (readonly [Point, Point])[] = [
    [crossing, [0, 1]],
    [crossing, [1, 0]],
    ...(zigzag && pattern.cornersAlong ? [[zigzag, pattern.cornersAlong] as const] : []),
  ];
  const lines = ways.map((way, i) => lineIn(`${i + 1}`, ...way, question));
  if (lines.some((line) => line === undefined)) return undefined;
  const further = ways.slice(2).map(([at, way]) => ownLine(at, way, maxX - minX + maxY - minY));
  const { firstPiece, guide } = firstTileOf({ chalk: { crossing, further }, pattern }, pieces);
  const { along, across } = guide!;
  return {
    lines: lines.flatMap((line) => line ?? []),
    firstPiece,
    guide: { along, across },
    ...(zigzag && {
      zigzag: { every: Math.round(Math.hypot(...pattern.a)), like: likeFirst(question, firstPiece) },
    }),
  };
}

/** A piece that lies as the first tile of the repeat, whose corners stand on the zigzag: the one that is set first where it does. */
function likeFirst({ pattern, pieces }: InlayQuestion, firstPiece: string): string {
  const { quarter } = pattern.tiles[0]!;
  const alike = pieces.filter((piece) => piece.quarter === quarter);
  const best = alike.find(({ id }) => id === firstPiece) ?? alike.find(({ whole }) => whole) ?? alike[0];
  return best?.id ?? firstPiece;
}

/** Joints as far from the middle as each other, but for rounding. */
const SAME: Ticks = 4;

/** The joint nearest to the middle; of two as near the one by the walls that the inlay is placed from. */
function nearest(
  axis: 0 | 1,
  middle: Point,
  origin: Point,
  { pattern, outline }: InlayQuestion,
): Ticks | undefined {
  const joints = jointsOn(axis, { outline }, pattern, origin);
  const off = (at: Ticks) => Math.abs(at - middle[axis]);
  const least = Math.min(...joints.map(off));
  const near = (at: Ticks) => Math.abs(at - outline[0]![axis]);
  return joints.filter((at) => off(at) <= least + SAME).sort((a, b) => near(a) - near(b))[0];
}

/** A line of the inlay's frame from edge to edge in that of the floor; undefined where it misses the inlay. */
function lineIn(
  name: string,
  own: Point,
  way: Point,
  { turn, at, ring, sides }: InlayQuestion,
): InlayLine | undefined {
  const [x, y] = rotate(own, turn);
  const [u, v] = rotate(way, turn);
  const [span] = lineThroughShape({ outer: ring, holes: [] }, [x + at[0], y + at[1]], [u, v]);
  if (!span) return undefined;
  const ends = [span.from, span.to].map((t): Point => [x + at[0] + t * u, y + at[1] + t * v]);
  const [from, to] = ends.map(inTicks) as [Point, Point];
  return { name, from, to, marks: ends.map((end) => markOnSide(sides, end)) };
}

/** A line long enough for what lies in the inlay, in its pattern's own frame. */
function ownLine([x, y]: Point, [u, v]: Point, long: number): ChalkLine {
  const by = long / Math.hypot(u, v);
  const ends = { from: inTicks([x - by * u, y - by * v]), to: inTicks([x + by * u, y + by * v]) };
  return { name: '', ...ends, marks: [], snappable: true };
}
