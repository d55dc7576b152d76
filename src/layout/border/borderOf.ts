import type { BorderCourse, SurfaceSpec } from '../../job/Job.ts';
import type { Problem } from '../../job/Problem.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import type { Border } from './Border.ts';
import { type FacingSides, facingSides } from './facingSides.ts';
import { type BorderGround, type MadeBorder, makeBorder, refused, wallsOf } from './makeBorder.ts';
import { solveWidth } from './solveWidth.ts';

/** The border that a surface's job asks for, its open width solved for the pattern inside it; undefined where there is none. */
export function borderOf(
  ground: BorderGround,
  pattern: Pattern,
): MadeBorder | { readonly problems: readonly Problem[] } | undefined {
  const wanted = ground.surface.border;
  if (!wanted || wanted.length === 0) return undefined;
  const open = wanted.findIndex(({ width }) => typeof width !== 'number');
  const solved = open < 0 ? undefined : solvedCourse(ground, pattern, open);
  if (open >= 0 && !solved) return unsolved(ground.surface, wanted[open]!.width);
  const courses = wanted.map(({ width, ...course }): Border['courses'][number] =>
    typeof width === 'number' ? { ...course, width } : { ...course, ...solved! },
  );
  return makeBorder(ground, courses);
}

function unsolved({ name }: SurfaceSpec, width: BorderCourse['width']): ReturnType<typeof refused> {
  if (typeof width !== 'object') return refused({ name }, 'borderUnsolved', {});
  const [one, other] = width.between;
  return refused({ name }, 'borderNotFacing', { one, other });
}

/** The width of the course that is left open; undefined where no two walls face each other, or the named ones do not. */
function solvedCourse(
  { job, surface, room, wide = [], ...rest }: BorderGround,
  pattern: Pattern,
  open: number,
): ReturnType<typeof solveWidth> | undefined {
  const wanted = surface.border!;
  const { width } = wanted[open]!;
  const named = typeof width === 'object' ? width.between : undefined;
  const [first, second] = facingSides(wallsOf({ ...rest, surface, room }), named).map((one) =>
    drawn(one, wide),
  );
  if (!first) return undefined;
  const others = wanted.reduce(
    (sum, { width }) => (typeof width === 'number' ? sum + width + job.joint : sum),
    0,
  );
  const most = job.tiles.find(({ key }) => key === wanted[open]!.tile)!.width;
  const least = Math.min(surface.minStrip, most);
  return solveWidth({ facing: [first, second], pattern, most, least, others, step: job.print.step });
}

/** Two walls as far from each other as the pattern repeats between them: less what soft joints there are wider than its joint. */
function drawn(facing: FacingSides, wide: readonly WideJoint[]): FacingSides {
  const extras = wide.map(({ axis, extra }) => Math.round(Math.abs(facing.across[axis])) * extra);
  return { ...facing, run: extras.reduce((run, extra) => run - extra, facing.run) };
}
