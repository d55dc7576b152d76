import type { System, Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** Clearance over the finished tile under a jamb or casing, in inches with round millimetres. */
export const UNDERCUT_CLEARANCE: Fact<Readonly<Record<System, number>>> = {
  value: { inches: 1 / 16, mm: 2 },
  mark: 'P',
  source: 'practice',
};

/** Gap under a door over the finished floor when the job does not say, in inches with round millimetres. */
export const DOOR_GAP: Fact<Readonly<Record<System, number>>> = {
  value: { inches: 3 / 8, mm: 10 },
  mark: 'P',
  source: 'practice',
};

/**
 * The gap that a door wants over the finished floor, in ticks.
 *
 * @example
 * doorGap('mm') //=> 3200
 */
export function doorGap(system: System): Ticks {
  return system === 'mm' ? millimetres(DOOR_GAP.value.mm) : inches(DOOR_GAP.value.inches);
}

/**
 * Play that is left between the face of the tile and what is cut over it, in ticks.
 *
 * @example
 * undercutPlay('mm') //=> 640
 */
export function undercutPlay(system: System): Ticks {
  const { inches: inInches, mm } = UNDERCUT_CLEARANCE.value;
  return system === 'mm' ? millimetres(mm) : inches(inInches);
}

/**
 * Height at which a jamb is cut, over the floor that the new layers lie on, in ticks.
 *
 * @example
 * undercut([4064, 1016, 3048, 1016]) //=> 9652
 * undercut([1280, 2880], 'mm') //=> 4800
 */
export function undercut(layers: readonly Ticks[], system: System = 'inches'): Ticks {
  return layers.reduce((sum, layer) => sum + layer, undercutPlay(system));
}
