import { distancePointSegment, type Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Chalk, ChalkLine, Layout, Piece } from '../Layout.ts';
import { isCourseOn } from './isCourseOn.ts';
import { nearestOff, type TileOffs, tileOffs } from './tileOffs.ts';

/**
 * The first tile to set. Courses begin at the crossing of the lines, with the whole tile nearest to it where the piece there is sawn or its
 * course has no joint on the upright line; of another pattern it is the whole tile that lies nearest to the crossing beyond both lines, or beside
 * them where none is near, in zigzag beside them with its corner on one along it; how far its sides stand from both is told where no joint need
 * run along a line.
 */
export function firstTile(
  crossing: Point,
  { inCourses, straightX, straightY, joint, module }: Pattern,
  pieces: readonly Piece[],
  { courses, further = [] }: Pick<Chalk, 'further'> & Pick<ChalkLine, 'courses'> = {},
): Pick<Chalk, 'firstPiece' | 'guide'> {
  const { id: named, whole, row } = pieces.find(({ id }) => id === 'K1-1') ?? pieces[0]!;
  if (inCourses && whole && isCourseOn(courses, row)) return { firstPiece: named };
  const offs = tileOffs(crossing, pieces);
  if (inCourses) return firstOfCourses(offs, joint) ?? { firstPiece: named };
  const beside = offs.filter(standsBeside);
  const onLine = beside.filter((one) => isOnZigzag(one, further));
  // A tile far off both lines stands no truer for lying beyond them.
  const beyond = beside.filter(({ isBeyond, off }) => isBeyond && Math.max(...off) <= Math.max(...module));
  const wanted = [onLine, beyond, beside].find(({ length }) => length > 0);
  if (!wanted) return { firstPiece: named };
  return guided(nearestOff(wanted), straightX && straightY);
}

/** The whole tile nearest to the crossing; the lines show where it stands when it has its corner there. */
function firstOfCourses(
  offs: readonly TileOffs[],
  joint: Ticks,
): Pick<Chalk, 'firstPiece' | 'guide'> | undefined {
  const beside = offs.filter(standsBeside);
  if (beside.length === 0) return undefined;
  const nearest = nearestOff(beside);
  return Math.max(...nearest.off) <= joint ? { firstPiece: nearest.id } : guided(nearest, true);
}

/**
 * The first tile of the zone that is set first, where the first of the whole floor is not in it: the whole tile nearest to the crossing that
 * lies across neither line, in zigzag one with its corner on a line along it; how far its sides stand from both lines is told.
 */
export function firstTileOf(
  { chalk, pattern }: Pick<Layout, 'pattern'> & { readonly chalk: Pick<Chalk, 'crossing' | 'further'> },
  pieces: readonly Piece[],
): Pick<Chalk, 'firstPiece' | 'guide'> {
  const offs = tileOffs(chalk.crossing, pieces);
  const beside = offs.filter(standsBeside);
  const onLine = beside.filter((one) => isOnZigzag(one, chalk.further ?? []));
  const whole = offs.filter((one) => one.whole);
  const wanted = [onLine, beside, whole].find(({ length }) => length > 0) ?? offs;
  const { inCourses, straightX, straightY } = pattern;
  return guided(nearestOff(wanted), inCourses || (straightX && straightY));
}

function guided({ id, off }: TileOffs, onJoints: boolean): Pick<Chalk, 'firstPiece' | 'guide'> {
  const [along, across] = [Math.abs(off[0]), Math.abs(off[1])];
  return { firstPiece: id, guide: { along, across, onJoints } };
}

function standsBeside({ whole, off }: TileOffs): boolean {
  return whole && Math.min(...off) >= 0;
}

/** Along a zigzag the first tile has its corner on a line, so that both can be held against each other; the drawing shows its side. */
function isOnZigzag({ corner }: TileOffs, further: readonly ChalkLine[]): boolean {
  return further.some((line) => !line.axis && standsOn(corner, line));
}

/** Ends of lines are rounded to ticks. */
const ON_LINE = 2;

function standsOn(corner: Point | undefined, { from, to }: ChalkLine): boolean {
  return corner !== undefined && distancePointSegment(corner, from, to) <= ON_LINE;
}
