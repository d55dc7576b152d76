import type { Point } from '../../../geometry/index.ts';
import { NEAR_FULL } from '../../faults/limits.ts';
import type { Candidate } from '../../Layout.ts';
import { AXES } from '../Choice.ts';
import { stretchOf } from '../stretchOf.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';
import { moved } from './moved.ts';

/** Where the end cuts are nearly whole tiles: half a module over, so that there is one more full tile and no trimming. */
export function withoutTrim(question: AlternativeQuestion): Candidate[] {
  const { pattern, chosen, ends } = question;
  return AXES.flatMap((axis, index) => {
    // Shifted courses end differently in turn: half a module over only swaps them.
    if (axis === 'along' && !pattern.straightX) return [];
    const { size, joint } = stretchOf(ends[axis], pattern, index as 0 | 1);
    const cuts = chosen.candidate.ends[axis];
    const trimmed = cuts.filter((cut) => cut > NEAR_FULL * size && cut < size);
    if (trimmed.length === 0) return [];
    const half = Math.round((size + joint) / 2);
    const by: Point = index === 0 ? [half, 0] : [0, half];
    return [
      moved(question, by, { code: 'start.withoutTrim', figures: { axis, trim: Math.max(...trimmed) } }),
    ];
  });
}
