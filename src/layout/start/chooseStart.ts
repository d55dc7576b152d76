import type { Pattern } from '../../pattern/Pattern.ts';
import type { Candidate, Rival, Start } from '../Layout.ts';
import { affordable } from './affordable.ts';
import { alternativesTo } from './alternatives/alternativesTo.ts';
import { bestLaid, rankScored } from './bestLaid.ts';
import type { Axis, Choice, MainRuns } from './Choice.ts';
import { candidateSet } from './candidateSet.ts';
import { evaluate } from './evaluate.ts';
import { axisRuns } from './mainRuns.ts';
import { nearStarts } from './nearStarts.ts';
import { rivalsOf } from './rivalsOf.ts';
import type { Scored, StartQuestion } from './StartQuestion.ts';
import { sameStart } from './sameStart.ts';
import { webPrice, withoutWebs } from './withoutWebs.ts';

export type StartAnswer =
  | { readonly start: Start; readonly runs: MainRuns; readonly rivals: readonly Rival[] }
  | { readonly unknown: string; readonly axis: Axis };

/**
 * Where the pattern starts: as wished; else as the search of the walls proves best, or so near to it that what is laid piece by
 * piece may decide. With the best that only balances a run, and what else is worth a look.
 */
export function chooseStart(question: StartQuestion): StartAnswer {
  const { ground, pattern } = question;
  const runs = axisRuns(ground);
  const set = candidateSet(question, { along: runs.along[0]!, across: runs.across[0]! });
  if ('unknown' in set) return set;
  const starts = nearStarts(question, set);
  const { rule, bound, wallsOf } = starts;
  const known = new Map<Choice, Scored>();
  const lay = (choice: Choice): Scored => {
    const candidate = () => ({ ...evaluate(ground, pattern, choice, set.ends), walls: wallsOf(choice) });
    const scored = known.get(choice) ?? { choice, candidate: candidate() };
    known.set(choice, scored);
    return scored;
  };
  const best = bestLaid(starts, affordable(question), pattern, lay);
  const chosen = withoutWebs(best, ground, starts, lay);
  const runnerUp = nextBest(chosen, rankScored(rule.map(lay)), pattern);
  const { along, across } = chosen.choice;
  const alternatives = alternativesTo({ ...question, chosen, ends: set.ends, runs });
  const hasFewerWebs = alternatives.some(({ webFaults }) => webFaults < chosen.candidate.webFaults);
  const priced = hasFewerWebs ? [] : webPrice(chosen, [...known.values()]);
  return {
    start: {
      along,
      across,
      chosen: chosen.candidate,
      bound,
      ...(runnerUp && { runnerUp: runnerUp.candidate }),
      alternatives: [...alternatives, ...priced],
    },
    runs: set.runs,
    rivals: rivalsOf(chosen, [...known.values()], ground),
  };
}

/** The next best of those that balance a run; one that is only the mirror image of the chosen one tells nothing, where there is another. */
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
