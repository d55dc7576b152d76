import type { Point } from '../../../geometry/index.ts';
import { slantOf } from '../../frame/slantOf.ts';
import type { Candidate } from '../../Layout.ts';
import { planOn } from '../axisChoices.ts';
import { balancedOffers } from '../balanced.ts';
import { AXES, type Axis } from '../Choice.ts';
import { evaluate } from '../evaluate.ts';
import type { FacingRun } from '../findRuns.ts';
import { isSlanted } from '../mainRuns.ts';
import { rank } from '../rank.ts';
import { stretchOf } from '../stretchOf.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';

/** Runs beyond the first that are tried on each axis. */
const MOST = 3;

/** Balanced on another run than the one that decided, such as a corridor instead of the kitchen it leaves. */
export function otherRuns(question: AlternativeQuestion): Candidate[] {
  if (isSlanted(slantOf(question.surface.pattern, question.ground.frame.edges))) return [];
  return AXES.flatMap((axis) =>
    question.runs[axis].slice(0, MOST + 1).flatMap((run) => balancedOn(question, axis, run)),
  );
}

function balancedOn(question: AlternativeQuestion, axis: Axis, run: FacingRun): Candidate[] {
  const { ground, pattern, chosen, ends } = question;
  if (Math.abs(middleOf(run) - middleOf(ends[axis])) <= 1) return [];
  const index = axis === 'along' ? 0 : 1;
  const balanced = balancedOffers(stretchOf(run, pattern, index)).filter(({ shift }) => shift === 0);
  const { offers, starts } = planOn(balanced, 'best', run, ground);
  const made = offers.map(({ position }, i): Candidate => {
    const { origin } = chosen.choice;
    const moved: Point = index === 0 ? [position, origin[1]] : [origin[0], position];
    const choice = { ...chosen.choice, origin: moved, [axis]: starts[i]!, shift: 0 };
    const candidate = evaluate(ground, pattern, choice, { ...ends, [axis]: run });
    const { from, to, length } = starts[i]!.run!;
    const figures = { axis, from, to, run: length, what: starts[i]!.what };
    return { ...candidate, reason: [{ code: 'start.otherRun', figures }] };
  });
  return rank(made).slice(0, 1);
}

function middleOf({ low, high }: FacingRun): number {
  return (low + high) / 2;
}
