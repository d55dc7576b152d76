import { slantOf } from '../frame/slantOf.ts';
import { type AxisPlan, crossed, planAxis } from './axisChoices.ts';
import type { Axis, Choice, MainRuns } from './Choice.ts';
import { isSlanted } from './mainRuns.ts';
import type { StartQuestion } from './StartQuestion.ts';
import { distinct } from './sameStart.ts';
import { slantedChoices } from './slantedChoices.ts';

/** The starts that are tried. */
export interface CandidateSet {
  readonly choices: readonly Choice[];
  /** The runs that were balanced, and those along the frame's axes whose end cuts are told. */
  readonly runs: MainRuns;
  readonly ends: MainRuns;
}

/** Every start that a job's wishes allow, or the name of an edge that the room does not have; `main` are the runs that decide. */
export function candidateSet(
  {
    ground,
    pattern,
    surface: { pattern: spec, start },
  }: Pick<StartQuestion, 'ground' | 'pattern' | 'surface'>,
  main: MainRuns,
): CandidateSet | { readonly unknown: string; readonly axis: Axis } {
  const free = start.along.kind === 'best' && start.across.kind === 'best';
  const slantDeg = slantOf(spec, ground.frame.edges);
  if (free && isSlanted(slantDeg)) {
    const choices = slantedChoices(ground, pattern, (slantDeg * Math.PI) / 180);
    return { choices, runs: main, ends: main };
  }
  const along = planAxis(start.along, ground, pattern, 0, main.along);
  if ('unknown' in along) return { ...along, axis: 'along' };
  const across = planAxis(start.across, ground, pattern, 1, main.across);
  if ('unknown' in across) return { ...across, axis: 'across' };
  const runs = decisive(along, across);
  return { choices: distinct(crossed(along, across), pattern), runs, ends: runs };
}

function decisive(along: AxisPlan, across: AxisPlan): MainRuns {
  return { along: along.run, across: across.run };
}
