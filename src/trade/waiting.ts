import type { Fact } from './Fact.ts';

const DAY = 24;

/** Hours after setting before grouting: least, usual, and where it is cold or damp or the tile is large. */
export const GROUT_AFTER: Fact<{ least: number; usual: number; slow: number }> = {
  value: { least: 24, usual: 48, slow: 72 },
  mark: 'H',
  source: 'NAVEDTRA 14044; UFGS 09 33 00',
};

/** Hours after grouting before light foot traffic and heavy use. */
export const WALK_AFTER: Fact<{ light: number; heavy: number }> = {
  value: { light: 24, heavy: 72 },
  mark: 'P',
  source: 'practice',
};

/** Hours after grouting between which cement grout is sealed. Practice is quoted from 48 hours to 28 days. */
export const SEAL_AFTER: Fact<readonly [number, number]> = {
  value: [4 * DAY, 6 * DAY],
  mark: 'P',
  source: 'practice',
};

/** Hours after grouting before standing water or a shower. */
export const WATER_AFTER: Fact<number> = { value: 7 * DAY, mark: 'P', source: 'practice' };

/** Days before the full heat of a heated floor, and °C a day after that. */
export const HEAT_AFTER: Fact<{ days: number; degreesADay: number }> = {
  value: { days: 28, degreesADay: 5 },
  mark: 'S',
  source: 'BS 5385-4',
};

/** Soft joints only after tile and grout are dry. */
export const SOFT_JOINT_ORDER: Fact<readonly string[]> = {
  value: ['set', 'grout', 'clean', 'softJoints', 'seal'],
  mark: 'S',
  source: 'ANSI A108.01 §3.7.4',
};

/** Below `fullC` waits double for every `doubleC` less; below `stopC` nothing is set. In °C. */
export const COLD: Fact<{ fullC: number; doubleC: number; stopC: number }> = {
  value: { fullC: 21, doubleC: 10, stopC: 10 },
  mark: 'P',
  source: 'practice',
};

/**
 * Factor on a wait at a room temperature in °C; 1 from 21 °C up. Not for times that a product's own sheet gives.
 *
 * @example
 * temperatureFactor(11) //=> 2
 * temperatureFactor(25) //=> 1
 */
export function temperatureFactor(tempC: number): number {
  const { fullC, doubleC } = COLD.value;
  return 2 ** (Math.max(0, fullC - tempC) / doubleC);
}

/**
 * Whether tile may be set at a temperature in °C.
 *
 * @example
 * warmEnough(9.9) //=> false
 */
export function warmEnough(tempC: number): boolean {
  return tempC >= COLD.value.stopC;
}
