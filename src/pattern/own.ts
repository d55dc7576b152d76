import { side } from '../geometry/index.ts';
import type { OwnRepeat } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onUnits } from './onUnits.ts';
import { ownPlaces } from './ownPlaces.ts';
import type { Pattern } from './Pattern.ts';

/** A pattern of the owner's own, as the job file places its tiles in modules. */
export function own(tiles: readonly Sized[], joint: Ticks, of: OwnRepeat): Pattern {
  const [first, second] = of.repeat;
  const leftHanded = side([0, 0], first, second) < 0;
  return onUnits('own', leftHanded ? [second, first] : of.repeat, ownPlaces(tiles, joint, of), joint);
}
