import { shapeArea } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { type Pattern, patternProblems } from '../pattern/index.ts';
import type { Room } from '../room/Room.ts';

/** More pieces than this are refused: nobody cuts them from a list. */
export const MOST_PIECES = 100_000;

/** Why a pattern is not laid at all. */
export function refusals(
  { tiles, print }: Pick<Job, 'tiles' | 'print'>,
  surface: SurfaceSpec,
  room: Room,
  pattern: Pattern,
): readonly Problem[] {
  const tooMany = tooManyPieces(surface, room, pattern);
  if (tooMany) return [tooMany];
  const found = patternProblems(pattern, surface.pattern, tiles, print.system);
  return found.map((one) => ({ ...one, path: [surface.name, 'pattern'], found: surface.name }));
}

function tooManyPieces({ name }: SurfaceSpec, { field }: Room, { a, b, tiles }: Pattern): Problem | null {
  const area = field.reduce((sum, shape) => sum + shapeArea(shape), 0);
  const about = Math.round((area * tiles.length) / (a[0] * b[1] - a[1] * b[0]));
  if (about <= MOST_PIECES) return null;
  const figures = { pieces: about, limit: MOST_PIECES };
  return { code: 'tooManyPieces', path: [name, 'pattern'], found: `${about}`, figures };
}
