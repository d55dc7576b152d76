import { bounds, type Point } from '../geometry/index.ts';
import { isCourseOn } from '../layout/chalk/isCourseOn.ts';
import type { ChalkLine } from '../layout/Layout.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * Where courses are shifted: which lines are joints of some of them only, and of which, told by the first tile, or where that lies in another
 * course by the tile of theirs that lies nearest to the crossing.
 */
export function coursesSay({ say }: SheetContext, { chalk, pieces }: PacketSurface): string[] {
  const later = (chalk.later ?? []).flatMap(({ lines }) => lines);
  const on = [...chalk.lines, ...(chalk.further ?? []), ...later].filter(({ courses }) => courses);
  const courses = on[0]?.courses;
  const tile = courses && tileOn(courses, chalk, pieces);
  if (!tile) return [];
  const lines = on
    .map(({ name }) => name)
    .sort((a, b) => Number(a) - Number(b))
    .join(', ');
  return [say('sheet.set-out.courses', { count: on.length, lines, tile, every: courses.every })];
}

function tileOn(
  courses: ChalkLine['courses'],
  { crossing, firstPiece }: PacketSurface['chalk'],
  pieces: readonly PacketPiece[],
): string | undefined {
  const own = pieces.filter(({ row, border }) => !border && isCourseOn(courses, row));
  if (own.some(({ id }) => id === firstPiece)) return firstPiece;
  const off = (piece: PacketPiece) => distance(middleOf(piece), crossing);
  return own.sort((a, b) => off(a) - off(b))[0]?.id;
}

function middleOf({ fullTile }: PacketPiece): Point {
  const { minX, minY, maxX, maxY } = bounds(fullTile);
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
