import type { Point } from '../../../geometry/index.ts';
import type { Candidate } from '../../Layout.ts';
import { evaluate } from '../evaluate.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';

type Reason = Candidate['reason'][number];

/** The chosen start moved by so much on both axes, counted anew, with the reason for it put first. */
export function moved(question: AlternativeQuestion, by: Point, reason: Reason): Candidate {
  const { ground, pattern, chosen, ends } = question;
  const { choice } = chosen;
  const origin: Point = [choice.origin[0] + by[0], choice.origin[1] + by[1]];
  const made = evaluate(
    ground,
    pattern,
    { ...choice, origin, shift: Math.abs(by[0]) + Math.abs(by[1]) },
    ends,
  );
  const figures = { ...reason.figures, by: made.shift, shiftAlong: by[0], shiftAcross: by[1] };
  return { ...made, reason: [{ code: reason.code, figures }] };
}
