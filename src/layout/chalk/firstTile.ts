import { bounds, type Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Chalk, Piece } from '../Layout.ts';

/**
 * The first tile to set. Courses begin at the crossing of the lines; of another pattern it is the whole tile that lies nearest to the
 * crossing beyond both lines, and how far its sides stand from them is told, as no joint need run along a line.
 */
export function firstTile(
  crossing: Point,
  { inCourses, straightX, straightY }: Pattern,
  pieces: readonly Piece[],
): Pick<Chalk, 'firstPiece' | 'guide'> {
  const named = (pieces.find(({ id }) => id === 'K1-1') ?? pieces[0]!).id;
  if (inCourses) return { firstPiece: named };
  const offs = pieces.map(({ id, whole, fullTile }) => {
    const { minX, minY } = bounds(fullTile);
    return { id, whole, off: [minX - crossing[0], minY - crossing[1]] as const };
  });
  const beyond = offs.filter(({ whole, off }) => whole && off[0] >= 0 && off[1] >= 0);
  if (beyond.length === 0) return { firstPiece: named };
  const near = ({ off }: (typeof offs)[number]) => Math.hypot(...off);
  const first = beyond.reduce((best, one) => (near(one) < near(best) ? one : best));
  const onJoints = straightX && straightY;
  return { firstPiece: first.id, guide: { along: first.off[0], across: first.off[1], onJoints } };
}
