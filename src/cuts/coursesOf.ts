import { bounds, rangeOn } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import type { Course } from './Course.ts';
import { columnsOf } from './columnsOf.ts';

/**
 * Courses along x where the pattern has straight joints across them, and along y likewise, each from the lowest up; where those along y have none, as in
 * a running bond, columns that meet no joint along them. A pattern whose
 * tiles stand in no courses has none, even where a joint runs straight through it.
 */
export function coursesOf(layout: Layout): Course[] {
  const { straightX, straightY, inCourses } = layout.pattern;
  if (!inCourses) return [];
  return [
    ...(straightY ? coursesAlong(layout, 'along') : []),
    ...(straightX ? coursesAlong(layout, 'across') : columnsOf(layout, (place) => nameOf('across', place))),
  ];
}

function coursesAlong(layout: Layout, axis: Course['axis']): Course[] {
  const groups = new Map<number, Piece[]>();
  for (const piece of layout.pieces) {
    if (piece.border) continue;
    const box = bounds(piece.fullTile);
    const start = axis === 'along' ? box.minY : box.minX;
    const group = groups.get(start);
    if (group) group.push(piece);
    else groups.set(start, [piece]);
  }
  const starts = [...groups.keys()].sort((a, b) => a - b);
  const crossing = layout.chalk.crossing[axis === 'along' ? 1 : 0];
  const below = starts.filter((start) => start < crossing).length;
  return starts.map((start, i) => {
    const pieces = groups.get(start)!;
    return { axis, name: nameOf(axis, i - below), level: levelOf(pieces, axis), pieces };
  });
}

/** Two letters of the quadrants that a course runs through, and its place from the crossing, as its pieces are named. */
function nameOf(axis: Course['axis'], place: number): string {
  const quarters = axis === 'along' ? (place < 0 ? 'MN' : 'KL') : place < 0 ? 'LM' : 'KN';
  return `${quarters}${place < 0 ? -place : place + 1}`;
}

/**
 * The middle of its tiles, so that all courses of a floor are met alike; where that misses most of its pieces, as in a course of strips, the median
 * of their own middles. Half a tick off the whole ticks.
 */
function levelOf(pieces: readonly Piece[], axis: Course['axis']): number {
  const along = axis === 'along' ? 1 : 0;
  const [low, high] = rangeOn(pieces[0]!.fullTile, along);
  const middle = Math.floor((low + high) / 2) + 0.5;
  const own = pieces.map(({ shape }) => rangeOn(shape.outer, along));
  if (2 * own.filter(([from, to]) => from < middle && middle < to).length > pieces.length) return middle;
  const middles = own.map(([from, to]) => from + to).sort((a, b) => a - b);
  return Math.floor(middles[Math.floor(middles.length / 2)]! / 2) + 0.5;
}
