import type { Pattern } from '../../pattern/Pattern.ts';
import type { Candidate, Start } from '../Layout.ts';
import { alternativesTo } from './alternatives/alternativesTo.ts';
import { type AxisPlan, crossed, planAxis } from './axisChoices.ts';
import type { Axis, Choice, MainRuns } from './Choice.ts';
import { evaluate } from './evaluate.ts';
import { axisRuns, isSlanted } from './mainRuns.ts';
import { rank } from './rank.ts';
import type { Scored, StartQuestion } from './StartQuestion.ts';
import { distinct, sameStart } from './sameStart.ts';
import { slantedChoices } from './slantedChoices.ts';

export type StartAnswer =
  | { readonly start: Start; readonly runs: MainRuns }
  | { readonly unknown: string; readonly axis: Axis };

/**
 * Where the pattern starts: as wished, or the best of a small set on each axis, with the runner-up and what
 * else is worth a look. Another search may take this file's place: it need only answer the same question.
 */
export function chooseStart(question: StartQuestion): StartAnswer {
  const { ground, pattern } = question;
  const runs = axisRuns(ground);
  const set = candidateSet(question, { along: runs.along[0]!, across: runs.across[0]! });
  if ('unknown' in set) return set;
  const score = (choice: Choice): Scored => {
    const candidate = evaluate(ground, pattern, choice, set.ends);
    return { choice, candidate };
  };
  const [chosen, ...others] = ranked(set.choices.map(score));
  const runnerUp = nextBest(chosen!, others, pattern);
  const { along, across } = chosen!.choice;
  const alternatives = alternativesTo({ ...question, chosen: chosen!, ends: set.ends, runs });
  return {
    start: {
      along,
      across,
      chosen: chosen!.candidate,
      ...(runnerUp && { runnerUp: runnerUp.candidate }),
      alternatives,
    },
    runs: set.runs,
  };
}

/** The next best start; one that is only the mirror image of the chosen one tells nothing, where there is another. */
function nextBest(chosen: Scored, others: readonly Scored[], pattern: Pattern): Scored | undefined {
  const different = others.filter(({ choice }) => !sameStart(choice.origin, chosen.choice.origin, pattern));
  return different.find(({ candidate }) => !isMirrored(candidate, chosen.candidate)) ?? different[0];
}

const COUNTED = ['pieces', 'whole', 'underHalf', 'nearFull', 'webFaults', 'hardCuts'] as const;

/** Whether two starts count the same and end alike, perhaps the other way round. */
function isMirrored(one: Candidate, other: Candidate): boolean {
  const ends = ({ along, across }: Candidate['ends']) =>
    [along, across].map((cuts) => [...cuts].sort((a, b) => a - b).join(' ')).join(', ');
  return COUNTED.every((count) => one[count] === other[count]) && ends(one.ends) === ends(other.ends);
}

interface CandidateSet {
  readonly choices: readonly Choice[];
  /** The runs that were balanced, and those along the frame's axes whose end cuts are told. */
  readonly runs: MainRuns;
  readonly ends: MainRuns;
}

function candidateSet(
  { ground, pattern, surface: { pattern: spec, start } }: StartQuestion,
  main: MainRuns,
): CandidateSet | { readonly unknown: string; readonly axis: Axis } {
  const free = start.along.kind === 'best' && start.across.kind === 'best';
  if (free && isSlanted(spec.turnedDeg)) {
    const choices = slantedChoices(ground, pattern, (spec.turnedDeg * Math.PI) / 180);
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

function ranked(scored: readonly Scored[]): Scored[] {
  const order = rank(scored.map(({ candidate }) => candidate));
  return order.map((candidate) => scored.find((one) => one.candidate === candidate)!);
}
