import type { Point } from '../../../geometry/index.ts';
import type { Job, SurfaceSpec } from '../../../job/Job.ts';
import type { Room } from '../../../room/Room.ts';
import { drawnGround } from '../../frame/drawnGround.ts';
import type { Ground } from '../../frame/Ground.ts';
import { slantOf } from '../../frame/slantOf.ts';
import { groundOf } from '../../groundOf.ts';
import type { AxisStart, Candidate, Layout } from '../../Layout.ts';
import { onJoints } from '../../movement/onJoints.ts';
import { layTiles } from '../../pieces/layTiles.ts';
import { relaid } from '../../relaid.ts';
import type { WallScore } from '../../WallScore.ts';
import { AXES, type Choice } from '../Choice.ts';
import { type CandidateSet, candidateSet } from '../candidateSet.ts';
import { evaluate } from '../evaluate.ts';
import { axisRuns, isSlanted } from '../mainRuns.ts';
import { offBalance } from '../offeredStarts.ts';
import { searchStart } from '../search/searchStart.ts';
import { type NamedStart, namedStart } from './namedStart.ts';

/** A start for the curve, and the layout it makes: that of the chosen start with other pieces. */
export interface CurveLaid {
  readonly candidate: Candidate;
  readonly laid: Layout;
}

/** What starts for the curve are laid on, made ready once. */
export interface CurveGround {
  readonly ground: Ground;
  readonly pattern: Layout['pattern'];
  readonly origin: Point;
  readonly kerf: Job['saw']['kerf'];
  readonly set: CandidateSet;
  /** Whether how the pattern begins can be read off its walls course by course: it lies in courses along them. */
  readonly byCourse: boolean;
  /** On which axes the job leaves the start open. */
  readonly free: readonly [boolean, boolean];
  /** How many starts may be laid. */
  readonly most: number;
  /** What the walls in sight make of a start; undefined where they have more strips than they need have. */
  readonly wallsAt: (origin: Point) => WallScore | undefined;
  readonly lay: (origin: Point, walls: WallScore, name?: NamedStart) => CurveLaid;
  /**
   * Where the walls do not tell a start course by course and the job leaves it open on an axis: the starts beside it that a job file
   * can name, the nearest first.
   */
  readonly named?: (origin: Point) => readonly NamedStart[];
}

/** Starts laid at most for the curve, and pieces laid for all of them together. */
const MOST = 72;
const MOST_PIECES = 18_000;

/** Makes the floor of a layout ready for starts beside the chosen one; undefined where the job names an edge that it has not. */
export function curveGround(
  job: Pick<Job, 'saw' | 'print'>,
  surface: SurfaceSpec,
  room: Room,
  layout: Layout,
): CurveGround | undefined {
  const { pattern, start, origin, pieces, wide = [] } = layout;
  const asBuilt = groundOf(layout, surface, room, job.print.step);
  const ground = drawnGround(asBuilt, wide);
  const runs = axisRuns(ground);
  const set = candidateSet({ ground, pattern, surface }, { along: runs.along[0]!, across: runs.across[0]! });
  if ('unknown' in set) return undefined;
  const byCourse = pattern.inCourses && !isSlanted(slantOf(surface.pattern, ground.frame.edges));
  const wishes = { fixed: origin, from: origin, margin: -1, offBalance: () => 0 };
  const { scoreOf } = searchStart(ground, pattern, wishes);
  const strips = Math.max(start.bound.strips, scoreOf(origin).strips) + ground.tolerance.strips;
  const free = AXES.map((axis) => surface.start[axis].kind === 'best') as [boolean, boolean];
  const named =
    !byCourse && free.some(Boolean) ? namedStart(ground, pattern, job.print.step, free) : undefined;
  return {
    ground,
    pattern,
    origin,
    kerf: job.saw.kerf,
    set,
    byCourse,
    free,
    most: Math.min(MOST, Math.floor(MOST_PIECES / pieces.length)),
    wallsAt: (at) => {
      const walls = scoreOf(at);
      return walls.strips > strips ? undefined : walls;
    },
    ...(named && { named }),
    lay: (at, walls, name) => {
      const laid = layTiles(asBuilt, pattern, at, onJoints(wide, pattern, at));
      const choice = choiceAt(at, layout, set, byCourse);
      const counted = { ...evaluate(ground, pattern, choice, set.ends, laid), walls };
      const candidate = name ? toldBy(counted, name) : counted;
      return { candidate, laid: relaid(layout, asBuilt, laid, at) };
    },
  };
}

/** A start with the walls and the cuts at them that name it. */
function toldBy(candidate: Candidate, { at }: NamedStart): Candidate {
  const [along, across] = at;
  const reason = candidate.reason.map(({ code, figures }) => {
    const wall = (figures.axis === 'along' ? along : across)?.wall;
    return { code, figures: wall ? { ...figures, from: wall, to: wall } : figures };
  });
  const { ends } = candidate;
  return {
    ...candidate,
    ends: {
      along: along ? [along.cut, along.cut] : ends.along,
      across: across ? [across.cut, across.cut] : ends.across,
    },
    reason,
  };
}

/** Where walls do not tell a start course by course no cut at a run's end says where the pattern stands. */
function choiceAt(
  origin: Point,
  { start, pattern }: Pick<Layout, 'start' | 'pattern'>,
  { ends }: CandidateSet,
  byCourse: boolean,
): Choice {
  const axis = (one: 'along' | 'across', i: 0 | 1): AxisStart => {
    const { run } = start[one];
    return { wish: 'best', what: 'forTiles', position: origin[i], ...(run && byCourse && { run }) };
  };
  const shift =
    offBalance(origin[0], ends.along, pattern, 0) + offBalance(origin[1], ends.across, pattern, 1);
  return { origin, along: axis('along', 0), across: axis('across', 1), shift };
}
