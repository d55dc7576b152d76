import { bounds, distancePointSegment, type Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Chalk, ChalkLine, Piece } from '../Layout.ts';

/**
 * The first tile to set. Courses begin at the crossing of the lines; of another pattern it is the whole tile that lies nearest to the
 * crossing beyond both lines, in zigzag beside them with its corner on one along it; how far its sides stand from both is told, as no joint need
 * run along a line.
 */
export function firstTile(
  crossing: Point,
  { inCourses, straightX, straightY }: Pattern,
  pieces: readonly Piece[],
  further: readonly ChalkLine[] = [],
): Pick<Chalk, 'firstPiece' | 'guide'> {
  const named = (pieces.find(({ id }) => id === 'K1-1') ?? pieces[0]!).id;
  if (inCourses) return { firstPiece: named };
  const offs = pieces.map(({ id, whole, fullTile, quarter }) => {
    const { minX, minY, maxX, maxY } = bounds(fullTile);
    const corner: Point | undefined = quarter === 0 ? [minX, minY] : undefined;
    const beside = [
      Math.max(minX - crossing[0], crossing[0] - maxX),
      Math.max(minY - crossing[1], crossing[1] - maxY),
    ] as const;
    return { id, whole, corner, isBeyond: minX >= crossing[0] && minY >= crossing[1], off: beside };
  });
  const beyond = offs.filter(({ whole, isBeyond }) => whole && isBeyond);
  // Along a zigzag the first tile has its corner on a line, so that both can be held against each other; the drawing shows its side.
  const zigzag = further.filter(({ axis }) => !axis);
  const onLine = offs.filter(
    ({ whole, corner, off }) =>
      whole && Math.min(...off) >= 0 && zigzag.some((line) => standsOn(corner, line)),
  );
  const wanted = onLine.length > 0 ? onLine : beyond;
  if (wanted.length === 0) return { firstPiece: named };
  const near = ({ off }: (typeof offs)[number]) => Math.hypot(...off);
  const first = wanted.reduce((best, one) => (near(one) < near(best) ? one : best));
  const onJoints = straightX && straightY;
  return { firstPiece: first.id, guide: { along: first.off[0], across: first.off[1], onJoints } };
}

/** Ends of lines are rounded to ticks. */
const ON_LINE = 2;

function standsOn(corner: Point | undefined, { from, to }: ChalkLine): boolean {
  return corner !== undefined && distancePointSegment(corner, from, to) <= ON_LINE;
}
