import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** Clearance over the finished tile under a jamb or casing, in inches. */
export const UNDERCUT_CLEARANCE: Fact<number> = { value: 1 / 16, mark: 'P', source: 'practice' };

/** Gap under a door over the finished floor when the job does not say, in inches. */
export const DOOR_GAP: Fact<number> = { value: 3 / 8, mark: 'P', source: 'practice' };

/**
 * Height at which a jamb is cut, over the floor that the new layers lie on, in ticks.
 *
 * @example
 * undercut([4064, 1016, 3048, 1016]) //=> 9652
 */
export function undercut(layers: readonly Ticks[]): Ticks {
  return layers.reduce((sum, layer) => sum + layer, 0) + inches(UNDERCUT_CLEARANCE.value);
}
