import type { Problem } from '../../job/Problem.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Border } from './Border.ts';
import { facingSides } from './facingSides.ts';
import { type BorderGround, type MadeBorder, makeBorder, refused, wallsOf } from './makeBorder.ts';
import { solveWidth } from './solveWidth.ts';

/** The border that a surface's job asks for, its open width solved for the pattern inside it; undefined where there is none. */
export function borderOf(
  ground: BorderGround,
  pattern: Pattern,
): MadeBorder | { readonly problems: readonly Problem[] } | undefined {
  const wanted = ground.surface.border;
  if (!wanted || wanted.length === 0) return undefined;
  const open = wanted.findIndex(({ width }) => width === 'solve');
  const solved = open < 0 ? undefined : solvedCourse(ground, pattern, open);
  if (open >= 0 && !solved) return refused(ground.surface, 'borderUnsolved', {});
  const courses = wanted.map(({ width, ...course }): Border['courses'][number] =>
    width === 'solve' ? { ...course, ...solved! } : { ...course, width },
  );
  return makeBorder(ground, courses);
}

/** The width of the course that is left open; undefined where no two walls face each other. */
function solvedCourse(
  { job, surface, room, ...rest }: BorderGround,
  pattern: Pattern,
  open: number,
): ReturnType<typeof solveWidth> | undefined {
  const facing = facingSides(wallsOf({ ...rest, surface, room }));
  if (!facing) return undefined;
  const wanted = surface.border!;
  const others = wanted.reduce((sum, { width }) => (width === 'solve' ? sum : sum + width + job.joint), 0);
  const most = job.tiles.find(({ key }) => key === wanted[open]!.tile)!.width;
  const least = Math.min(surface.minStrip, most);
  return solveWidth({ facing, pattern, most, least, others, step: job.print.step });
}
