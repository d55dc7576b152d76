import type { Point } from '../../geometry/index.ts';
import type { SurfaceSpec } from '../../job/Job.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Candidate, Start } from '../Layout.ts';
import { laidPieces } from '../pieces/laidPieces.ts';
import { layTiles } from '../pieces/layTiles.ts';
import { AXES, type MainRuns } from '../start/Choice.ts';
import { evaluate } from '../start/evaluate.ts';
import { searchStart } from '../start/search/searchStart.ts';
import { type WideJoint, wideJoints } from './wideJoints.ts';

/**
 * A start moved by less than a joint where that brings a row of the field up to its border, which it ended short of: the joint round the
 * field is then as wide as the others. Moved only where no cut becomes worse, and on an axis of which the job says nothing.
 */
export function flushStart(
  start: Start,
  runs: MainRuns,
  ground: Ground,
  pattern: Pattern,
  wishes: SurfaceSpec['start'],
): Start {
  if (!pattern.inCourses || !ground.frame.edges.some(({ meets }) => meets === 'border')) return start;
  const { origin } = start.chosen;
  const open = widest(ground, pattern, origin).filter(({ axis }) => wishes[AXES[axis]].kind === 'best');
  if (open.length === 0) return start;
  const moves = ([0, 1] as const).map((axis) => [0, ...open.filter((one) => one.axis === axis).map(stepOf)]);
  const tried = moves[0]!.flatMap((x) => moves[1]!.map((y): Point => [origin[0] + x, origin[1] + y]));
  const { along, across, chosen } = start;
  let best = { worst: worstAt(ground, pattern, origin), start };
  for (const at of tried) {
    const worst = worstAt(ground, pattern, at);
    if (worst >= best.worst) continue;
    const axes = {
      along: { ...along, position: along.position + at[0] - origin[0] },
      across: { ...across, position: across.position + at[1] - origin[1] },
    };
    const candidate = evaluate(ground, pattern, { ...axes, origin: at, shift: chosen.shift }, runs);
    if (isWorse(candidate, chosen)) continue;
    best = {
      worst,
      start: { ...start, ...axes, chosen: { ...candidate, walls: scoreAt(ground, pattern, at) } },
    };
  }
  return best.start;
}

/** Down where the row ends above its border, up where below. */
function stepOf({ side, more }: WideJoint): number {
  return side === 'low' ? -more : more;
}

function isWorse(one: Candidate, than: Candidate): boolean {
  const counts = ['underHalf', 'nearFull', 'webFaults', 'thin', 'slivers', 'cut'] as const;
  return counts.some((count) => (one[count] ?? 0) > (than[count] ?? 0));
}

function worstAt(ground: Ground, pattern: Pattern, origin: Point): number {
  return Math.max(0, ...widest(ground, pattern, origin).map(({ more }) => more));
}

function widest(ground: Ground, pattern: Pattern, origin: Point): WideJoint[] {
  const laid = layTiles(ground, pattern, origin);
  return wideJoints(ground.frame.edges, laidPieces(laid), pattern.joint);
}

function scoreAt(ground: Ground, pattern: Pattern, origin: Point) {
  const wishes = { fixed: origin, from: origin, margin: -1, offBalance: () => 0 };
  return searchStart(ground, pattern, wishes).scoreOf(origin);
}
