import type { Point } from '../../../geometry/index.ts';
import { EASED_JOINT } from '../../../trade/index.ts';
import { NEAR_FULL } from '../../faults/limits.ts';
import type { Candidate } from '../../Layout.ts';
import { jointOnMiddle, tileOnMiddle } from '../balanced.ts';
import { AXES, type Axis } from '../Choice.ts';
import { evaluate } from '../evaluate.ts';
import { rank } from '../rank.ts';
import { stretchOf } from '../stretchOf.ts';
import type { AlternativeQuestion } from './AlternativeQuestion.ts';

/** A joint is eased by one step at most, and in whole steps. */
const { most: STEP, least: LEAST } = EASED_JOINT.value;

/** Where the end cuts are nearly whole tiles: the same number of whole tiles with a joint a little narrower. */
export function easedJoint(question: AlternativeQuestion): Candidate[] {
  return AXES.flatMap((axis) => eased(question, axis));
}

function eased(question: AlternativeQuestion, axis: Axis): Candidate[] {
  const { pattern, chosen, ends, ground, withJoint } = question;
  const index = axis === 'along' ? 0 : 1;
  const { low, high, size, joint } = stretchOf(ends[axis], pattern, index);
  const cuts = chosen.candidate.ends[axis];
  if (!cuts.some((cut) => cut > NEAR_FULL * size && cut < size)) return [];
  const tiles = Math.round((high - low + joint) / (size + joint));
  if (tiles < 2) return [];
  const narrower = Math.floor((high - low - tiles * size) / (tiles - 1) / STEP) * STEP;
  if (narrower < LEAST || narrower >= joint || joint - narrower > STEP) return [];
  const easedPattern = withJoint(narrower);
  const spare = Math.floor((high - low - tiles * size - (tiles - 1) * narrower) / 2);
  // What is left at the ends must be no more than a joint, or there would be room for a strip.
  if (spare > narrower) return [];
  const position = low + spare;
  const other = stretchOf(ends[axis === 'along' ? 'across' : 'along'], easedPattern, index === 0 ? 1 : 0);
  const made = [jointOnMiddle(other), tileOnMiddle(other)].map((at): Candidate => {
    const origin: Point = index === 0 ? [position, at] : [at, position];
    const candidate = evaluate(ground, easedPattern, { ...chosen.choice, origin, shift: 0 }, ends);
    const gap = ground.faces[ends[axis].lowFace]!.gap + spare;
    return {
      ...candidate,
      reason: [{ code: 'start.easedJoint', figures: { axis, joint: narrower, tileCount: tiles, gap } }],
    };
  });
  return rank(made).slice(0, 1);
}
