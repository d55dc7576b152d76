import { bounds, distancePointSegment, type Point } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { pulledApart } from '../layout/movement/pulledApart.ts';
import type { Ticks } from '../measure/index.ts';
import type { Course } from './Course.ts';
import type { RowTerm } from './Cut.ts';
import type { FreeSpan } from './freeSpans.ts';
import { lineCrossings } from './lineCrossings.ts';

interface Stretch {
  readonly id: string;
  readonly from: Ticks;
  readonly to: Ticks;
  readonly sawn: boolean;
}

/** A term before it is rounded, and whether a saw sets its size along this row. */
export interface ExactTerm extends Omit<RowTerm, 'saw'> {
  readonly sawn: boolean;
}

/** The terms of a line across a course, exact: a gap at each end, between them pieces, those of a border too, and joints, and gaps where tile is missing. */
export function rowTerms(layout: Layout, course: Course, span: FreeSpan): ExactTerm[] {
  const border = layout.pieces.filter((piece) => piece.border);
  const stretches = [...course.pieces, ...border]
    .flatMap((piece) => stretchesOf(piece, course))
    .filter(({ from, to }) => from + to > 2 * span.from && from + to < 2 * span.to)
    .sort((a, b) => a.from - b.from);
  const isJoint = jointTest(layout, course);
  const terms: ExactTerm[] = [];
  let place = span.from;
  const add = (what: RowTerm['what'], id: string, to: Ticks, sawn = false) => {
    terms.push({ what, id, exact: to - place, sawn });
    place = to;
  };
  for (const { id, from, to, sawn } of stretches) {
    if (place === span.from && terms.length === 0) add('gap', span.edges[0], from);
    else if (isJoint(place, from)) add('joint', '', from);
    else if (from > place) add('gap', nearestEdge(layout, course, (place + from) / 2), from);
    add('piece', id, to, sawn);
  }
  add('gap', span.edges[1], span.to);
  return terms;
}

/** What tells a joint from a space without tile: it is as wide as all are, or as a wide one where that lies. */
function jointTest({ pattern, wide = [] }: Layout, { axis }: Course): (from: Ticks, to: Ticks) => boolean {
  const along = axis === 'along' ? 0 : 1;
  const own = wide
    .filter((one) => one.axis === along)
    .map(({ at, extra }) => ({ middle: pulledApart(wide, along, at), width: pattern.joint + extra }));
  return (from, to) => {
    const across = own.find(({ middle }) => middle > from && middle < to);
    return Math.abs(to - from - (across?.width ?? pattern.joint)) <= ROUNDING;
  };
}

/** Rounding of a turned room may make a joint so much wider or narrower. */
const ROUNDING: Ticks = 2;

/** Where the line runs over a piece; not sawn along it where it runs from one side of the tile to the other. */
function stretchesOf(piece: Piece, { axis, level }: Course): Stretch[] {
  const along = axis === 'along' ? 0 : 1;
  const box = bounds(piece.fullTile);
  const [low, high] = along === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY];
  if (piece.whole && !piece.border) return [{ id: piece.id, from: low, to: high, sawn: false }];
  const places = [piece.shape.outer, ...piece.shape.holes]
    .flatMap((ring) => lineCrossings(ring, along, level))
    .sort((a, b) => a.at - b.at)
    .map(({ at }) => at);
  return places.flatMap((from, i) => {
    const to = places[i + 1] ?? from;
    const sawn = piece.border ? !piece.whole : from > low || to < high;
    return i % 2 === 0 && to > from ? [{ id: piece.id, from, to, sawn }] : [];
  });
}

/** The edge of the room whose gap a line runs through where it meets no tile. */
function nearestEdge({ frame }: Layout, { axis, level }: Course, place: number): string {
  const point: Point = axis === 'along' ? [place, level] : [level, place];
  const sides = [
    ...frame.edges.map(({ id, from, to }) => ({ id, away: distancePointSegment(point, from, to) })),
    ...frame.obstacles.flatMap(({ name, ring, edges }) =>
      ring.map((from, i) => ({
        id: edges[i]?.id ?? name,
        away: distancePointSegment(point, from, ring[(i + 1) % ring.length]!),
      })),
    ),
  ];
  return sides.reduce((best, next) => (next.away < best.away ? next : best)).id;
}
