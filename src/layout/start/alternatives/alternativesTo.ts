import type { Candidate } from '../../Layout.ts';
import { sameStart } from '../sameStart.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';
import { easedJoint } from './easedJoint.ts';
import { evenCourses } from './evenCourses.ts';
import { freedStrips } from './freedStrips.ts';
import { otherRuns } from './otherRuns.ts';
import { simplified } from './simplified.ts';
import { withoutTrim } from './withoutTrim.ts';

/** One kind of alternative a file, in the order they are shown. */
const kinds = [evenCourses, otherRuns, withoutTrim, easedJoint, simplified, freedStrips];
/** Those that ask nothing of courses of one tile, by which the others reckon. */
const kindsOfAny = [otherRuns, freedStrips];

/** Further starts that are worth a look beside the chosen one, each with its reason; none twice. */
export function alternativesTo(question: AlternativeQuestion): readonly Candidate[] {
  const kept: Candidate[] = [];
  for (const one of (question.pattern.inCourses ? kinds : kindsOfAny).flatMap((kind) => kind(question))) {
    const known = [question.chosen.candidate, ...kept].some(
      ({ origin, pieces }) => pieces === one.pieces && sameStart(origin, one.origin, question.pattern),
    );
    if (!known) kept.push(one);
  }
  return kept;
}
