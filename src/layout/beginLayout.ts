import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Pattern } from '../pattern/index.ts';
import { flushStart } from './border/flushStart.ts';
import { drawnGround } from './frame/drawnGround.ts';
import type { Ground } from './frame/Ground.ts';
import type { Rival, Start } from './Layout.ts';
import { onJoints } from './movement/onJoints.ts';
import type { WideJoint } from './movement/WideJoint.ts';
import { type Laid, layTiles } from './pieces/layTiles.ts';
import type { MainRuns } from './start/Choice.ts';
import { chooseStart } from './start/chooseStart.ts';
import { evaluate } from './start/evaluate.ts';

/** What is asked of a layout beside what the job says. */
export interface Over {
  readonly instead?: Rival;
  readonly wide?: readonly WideJoint[];
}

/** What a layout begins from. */
export interface Beginning {
  readonly ground: Ground;
  readonly surface: SurfaceSpec;
  readonly pattern: Pattern;
  /** The pattern without its colors, and the same with another joint. */
  readonly plain: Pattern;
  readonly withJoint: (joint: number) => Pattern;
}

/** A start, those near to it, what it is balanced on, and the tiles laid from it. */
export interface Begun {
  readonly start: Start;
  readonly rivals: readonly Rival[];
  readonly runs: MainRuns;
  readonly wide: readonly WideJoint[];
  readonly laid: Laid;
}

/** Where the pattern starts on its ground, and the tiles laid from there: chosen as on a ground without wide joints, laid with them. */
export function beginLayout(
  { ground, surface, pattern, plain, withJoint }: Beginning,
  { instead, wide: wished = [] }: Over,
): Begun | { readonly problems: readonly Problem[] } {
  const drawn = drawnGround(ground, wished);
  const chosen = chooseStart({ ground: drawn, pattern: plain, surface, withJoint });
  if ('unknown' in chosen) return { problems: [unknownEdge(surface, chosen.axis, chosen.unknown, drawn)] };
  const { runs, rivals } = chosen;
  const start = flushStart(withRival(chosen.start, instead), runs, drawn, plain, surface.start);
  const wide = onJoints(wished, plain, start.chosen.origin);
  const laid = layTiles(ground, pattern, start.chosen.origin, wide);
  const counted = wide.length === 0 ? start : recounted(start, drawn, plain, runs, laid);
  return { start: counted, rivals, runs, wide, laid };
}

/** A start with another in its place; the one that was the best before is then the second. */
function withRival(start: Start, instead: Rival | undefined): Start {
  return instead ? { ...start, ...instead, runnerUp: start.chosen } : start;
}

/** A start chosen on a ground drawn together, with the counts of the tiles as they lie. */
function recounted(start: Start, drawn: Ground, pattern: Pattern, runs: MainRuns, laid: Laid): Start {
  const { along, across, chosen } = start;
  const { origin, shift, reason } = chosen;
  const counts = evaluate(drawn, pattern, { origin, along, across, shift }, runs, laid);
  return { ...start, chosen: { ...chosen, ...counts, reason } };
}

function unknownEdge({ name }: SurfaceSpec, axis: string, found: string, { faces }: Ground): Problem {
  const names = [...new Set(faces.map((face) => face.name))].join(', ');
  return {
    code: 'unknownEdge',
    path: [name, 'start', axis],
    found,
    figures: { name: found, names, near: 'no' },
  };
}
