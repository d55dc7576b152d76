import type { Point } from '../../../geometry/index.ts';
import type { Job, SurfaceSpec } from '../../../job/Job.ts';
import type { Room } from '../../../room/Room.ts';
import { drawnGround } from '../../frame/drawnGround.ts';
import type { Face } from '../../frame/Face.ts';
import { slantOf } from '../../frame/slantOf.ts';
import { groundOf } from '../../groundOf.ts';
import type { AxisStart, Candidate, Layout } from '../../Layout.ts';
import { onJoints } from '../../movement/onJoints.ts';
import { layTiles } from '../../pieces/layTiles.ts';
import { relaid } from '../../relaid.ts';
import { AXES, type Choice } from '../Choice.ts';
import { candidateSet } from '../candidateSet.ts';
import { evaluate } from '../evaluate.ts';
import { axisRuns, isSlanted } from '../mainRuns.ts';
import { offBalance } from '../offeredStarts.ts';
import { sameStart } from '../sameStart.ts';
import { searchStart } from '../search/searchStart.ts';
import { type CurveAxis, curvePlaces, placesBeside } from './curvePlaces.ts';

/** Starts laid at most for the curve, and pieces laid for all of them together. */
const MOST = 72;
const MOST_PIECES = 18_000;

/** A start for the curve, and the layout it makes: that of the chosen start with other pieces. */
export interface CurveLaid {
  readonly candidate: Candidate;
  readonly laid: Layout;
}

/**
 * Starts at which the number of tiles may change, beside the chosen one: where a cut becomes half a tile less half the kerf, so that
 * one tile gives two, or a whole tile, or what another cut leaves. None that has more strips along the walls in sight; each laid
 * and counted. None where the pattern lies slantwise or the job names both places.
 */
export function curveCandidates(
  job: Pick<Job, 'saw' | 'print'>,
  surface: SurfaceSpec,
  room: Room,
  layout: Layout,
): CurveLaid[] {
  const { pattern, start, origin, pieces, wide = [] } = layout;
  const asBuilt = groundOf(layout, surface, room, job.print.step);
  const ground = drawnGround(asBuilt, wide);
  const runs = axisRuns(ground);
  const set = candidateSet({ ground, pattern, surface }, { along: runs.along[0]!, across: runs.across[0]! });
  if ('unknown' in set || isSlanted(slantOf(surface.pattern, ground.frame.edges))) return [];
  const { scoreOf } = searchStart(ground, pattern, {
    fixed: origin,
    from: origin,
    margin: -1,
    offBalance: () => 0,
  });
  const axes = ([0, 1] as const).map((axis): CurveAxis => {
    const { lowFace, highFace } = set.ends[AXES[axis]];
    const absent = [lowFace, highFace].map((face) => absentAt(ground.faces[face]!, pattern.joint));
    return { runs: set.ends, pattern, axis, kerf: job.saw.kerf, absent: absent as [number, number] };
  });
  const free = ([0, 1] as const).map((axis) => surface.start[AXES[axis]].kind === 'best');
  const own = axes.map((one, i) => (free[i] ? [origin[i]!, ...curvePlaces(one)] : [origin[i]!]));
  const pairs: Point[] = own[0]!.flatMap((x) => [
    ...own[1]!.map((y): Point => [x, y]),
    ...(free[1] ? placesBeside(axes[1]!, x) : []).map((y): Point => [x, y]),
  ]);
  const turned: Point[] = free[0]
    ? own[1]!.flatMap((y) => placesBeside(axes[0]!, y).map((x): Point => [x, y]))
    : [];
  const strips = Math.max(start.bound.strips, scoreOf(origin).strips) + ground.tolerance.strips;
  const kept: { choice: Choice; walls: NonNullable<Candidate['walls']> }[] = [];
  for (const at of [...pairs, ...turned]) {
    const walls = scoreOf(at);
    if (walls.strips > strips || kept.some(({ choice }) => sameStart(choice.origin, at, pattern))) continue;
    kept.push({ choice: choiceAt(at, start, set, pattern), walls });
  }
  kept.sort((a, b) => b.walls.narrowest - a.walls.narrowest);
  return kept.slice(0, Math.min(MOST, Math.floor(MOST_PIECES / pieces.length))).map(({ choice, walls }) => {
    const laid = layTiles(asBuilt, pattern, choice.origin, onJoints(wide, pattern, choice.origin));
    const candidate = { ...evaluate(ground, pattern, choice, set.ends, laid), walls };
    return { candidate, laid: relaid(layout, asBuilt, laid, choice.origin) };
  });
}

/** The widest strip that is left out as gap at a face. */
function absentAt({ gap, gapMax }: Face, joint: number): number {
  return Math.max(0, gapMax - gap - joint);
}

function choiceAt(
  origin: Point,
  start: Pick<Layout['start'], 'along' | 'across'>,
  { ends }: { ends: CurveAxis['runs'] },
  pattern: Layout['pattern'],
): Choice {
  const axis = (one: 'along' | 'across', i: 0 | 1): AxisStart => {
    const { run } = start[one];
    return { wish: 'best', what: 'forTiles', position: origin[i], ...(run && { run }) };
  };
  const shift =
    offBalance(origin[0], ends.along, pattern, 0) + offBalance(origin[1], ends.across, pattern, 1);
  return { origin, along: axis('along', 0), across: axis('across', 1), shift };
}
