import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';
import { BACKER, sealantDepth } from './sealantDepth.ts';

/** Joints narrower than this, in inches, have no room for a round backer. */
export const BACKER_FROM: Fact<number> = { value: 3 / 16, mark: 'P', source: 'practice' };

/** Where no round backer goes in, tape on the bottom keeps the sealant off it, so that it holds to the two sides alone. */
export const BOND_BREAKER: Fact<'on the bottom'> = { value: 'on the bottom', mark: 'P', source: 'practice' };

/** What lies under the sealant of a soft joint; ticks. */
export interface JointBacking {
  readonly kind: 'backer' | 'tape';
  /** Diameter of the backer, width of the tape. */
  readonly size: Ticks;
  /** Depth of the sealant over it. */
  readonly sealant: Ticks;
  /** Diameter of the backer that the width asks for, which may have no room; missing where the joint is too narrow for any. */
  readonly diameter?: Ticks;
}

/**
 * What backs a soft joint: a round backer where it and the sealant over it go into the depth of the joint, else tape on the bottom and
 * sealant from there up. Ticks; sizes are rounded, fits are not.
 *
 * @example
 * jointBacking(2032, 4064) //=> { kind: 'backer', size: 2540, sealant: 1016, diameter: 2540 }
 * jointBacking(3810, 4064) //=> { kind: 'tape', size: 3810, sealant: 4064, diameter: 4763 }
 * jointBacking(1016, 4064) //=> { kind: 'tape', size: 1016, sealant: 4064 }
 */
export function jointBacking(width: Ticks, depth: Ticks): JointBacking {
  const tape = { kind: 'tape', size: width, sealant: depth } as const;
  if (width < inches(BACKER_FROM.value)) return tape;
  const diameter = Math.round(width * BACKER.value);
  const sealant = sealantDepth(width);
  return diameter + sealant <= depth
    ? { kind: 'backer', size: diameter, sealant, diameter }
    : { ...tape, diameter };
}
