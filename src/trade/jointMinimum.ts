import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';
import type { TileEdge } from './sizeTolerance.ts';

/** The joint is at least so many times the difference between the largest and the smallest tile of the lot. */
export const JOINT_PER_SPREAD: Fact<number> = { value: 3, mark: 'S', source: 'ANSI A108.02 §4.3.8' };

/** No joint is narrower than this, in inches. */
export const JOINT_LEAST: Fact<number> = { value: 1 / 16, mark: 'S', source: 'ANSI A108.02 §4.3.8' };

/** Running bond of tile with a side longer than `over`: least joint in inches, to which the measured bow is added. */
export const RUNNING_JOINT: Fact<{ over: number; rectified: number; calibrated: number }> = {
  value: { over: 15, rectified: 1 / 8, calibrated: 3 / 16 },
  mark: 'S',
  source: 'ANSI A108.02 §4.3.8.1',
};

/**
 * Smallest joint for a lot, in ticks, from the spread of its measured sizes.
 *
 * @example
 * jointMinimum(508) //=> 1524
 * jointMinimum(127) //=> 508
 */
export function jointMinimum(spread: Ticks): Ticks {
  return Math.max(JOINT_PER_SPREAD.value * spread, inches(JOINT_LEAST.value));
}

/**
 * Smallest joint for running bond, in ticks; undefined where no side is long enough for the rule.
 * A natural edge is held to the rule for calibrated tile.
 *
 * @example
 * runningJointMinimum(195072, 'rectified', 254) //=> 1270
 * runningJointMinimum(97536, 'rectified', 254) //=> undefined
 */
export function runningJointMinimum(longestSide: Ticks, edge: TileEdge, bow: Ticks): Ticks | undefined {
  const { over, rectified, calibrated } = RUNNING_JOINT.value;
  if (longestSide <= inches(over)) return undefined;
  return inches(edge === 'rectified' ? rectified : calibrated) + bow;
}
