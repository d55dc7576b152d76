import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** Sealant is half as deep as it is wide, on round backer. */
export const SEALANT_DEPTH: Fact<number> = { value: 1 / 2, mark: 'S', source: 'TCNA Handbook' };

/** Round backer is thicker than its joint by this factor, so that it stays put. */
export const BACKER: Fact<number> = { value: 1.25, mark: 'P', source: 'practice' };

/** Share of sealant bought beyond the joints' volume, for nozzles and tooling. */
export const SEALANT_WASTE: Fact<number> = { value: 0.1, mark: 'P', source: 'practice' };

/**
 * Depth of sealant in a joint, in ticks, rounded up.
 *
 * @example
 * sealantDepth(2032) //=> 1016
 */
export function sealantDepth(width: Ticks): Ticks {
  return Math.ceil(width * SEALANT_DEPTH.value);
}
