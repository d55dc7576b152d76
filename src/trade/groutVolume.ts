import { TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** Share of the floor that is joint, times its depth; the usual first-order form is too high. */
export const GROUT_VOLUME: Fact<'[1 − LW ÷ ((L+j)(W+j))] · D'> = {
  value: '[1 − LW ÷ ((L+j)(W+j))] · D',
  mark: 'G',
  source: 'geometry',
};

/** Dry cement grout in a litre of joint, in kg, where the bag does not say. */
export const GROUT_DENSITY: Fact<number> = { value: 1.6, mark: 'P', source: 'practice' };

/** Share of grout bought beyond the joints' volume, for the bucket, the float and the next repair. */
export const GROUT_WASTE: Fact<number> = { value: 0.1, mark: 'P', source: 'practice' };

/** Joint width in inches from which grout is sanded, and over which it is coarse. */
export const GROUT_GRADE: Fact<{ sandedFrom: number; coarseOver: number }> = {
  value: { sandedFrom: 1 / 8, coarseOver: 3 / 8 },
  mark: 'S',
  source: 'TCNA FAQ',
};

/** Share of the joint's depth that is clear of mortar before grouting. */
export const JOINT_CLEAR: Fact<number> = { value: 2 / 3, mark: 'S', source: 'TCNA' };

/**
 * Grout in litres per square metre of floor, exact. All lengths in ticks.
 *
 * @example
 * groutVolume({ length: 96000, width: 96000, joint: 960, depth: 2880 }).toFixed(4) //=> '0.1773'
 */
export function groutVolume(of: {
  readonly length: Ticks;
  readonly width: Ticks;
  readonly joint: Ticks;
  readonly depth: Ticks;
}): number {
  const tile = of.length * of.width;
  const module = (of.length + of.joint) * (of.width + of.joint);
  return ((module - tile) / module) * (of.depth / TICKS_PER_MM);
}

/**
 * Grade of cement grout for a joint. Sand scratches soft faces: try it first.
 *
 * @example
 * groutGrade(508) //=> 'unsanded'
 * groutGrade(1016) //=> 'sanded'
 * groutGrade(4064) //=> 'coarse'
 */
export function groutGrade(joint: Ticks): 'unsanded' | 'sanded' | 'coarse' {
  if (joint < inches(GROUT_GRADE.value.sandedFrom)) return 'unsanded';
  return joint > inches(GROUT_GRADE.value.coarseOver) ? 'coarse' : 'sanded';
}
