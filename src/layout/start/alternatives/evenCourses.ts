import type { Candidate } from '../../Layout.ts';
import { bestCourses, courseEnds } from '../bestCourses.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';
import { moved } from './moved.ts';

/** Shares nearer than this are no gain. */
const SAME_SHARE = 0.0005;

/** Where a running bond could end its courses in larger cuts: moved along until the smallest of them is as large as can be. */
export function evenCourses(question: AlternativeQuestion): Candidate[] {
  const { pattern, chosen, ends, ground } = question;
  const [x] = chosen.choice.origin;
  const now = courseEnds(ends.along, pattern, ground.faces, x);
  const best = bestCourses(ends.along, pattern, ground.faces, x);
  if (!now || !best || best.smallest <= now.smallest) return [];
  const figures = { axis: 'along', before: now.smallest, size: best.smallest };
  const made = moved(question, [best.position - x, 0], { code: 'start.evenCourses', figures });
  return made.smallestShare > chosen.candidate.smallestShare + SAME_SHARE ? [made] : [];
}
