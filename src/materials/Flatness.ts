import type { Ticks } from '../measure/index.ts';
import type { Departure } from '../trade/index.ts';

/** What readings on a grid say of a floor: ticks, litres. */
export interface Flatness {
  /** The class that the tile asks for, and the best that the floor keeps; `unknown` where no straightedge spans the readings. */
  readonly needed: 'ordinary' | 'tight';
  readonly class: 'ordinary' | 'tight' | 'neither' | 'unknown';
  /** The worst spot under each straightedge; without `worst` the readings stand too far apart for it. */
  readonly under: readonly FlatnessUnder[];
  /** Height of the highest reading over the lowest. */
  readonly range: Ticks;
  /** Depth, on average over the floor, of the hollows under the longest straightedge, and of the floor under its highest reading. */
  readonly patchMean: Ticks;
  readonly levelMean: Ticks;
  readonly patchLitres: number;
  readonly levelLitres: number;
  /** Whole bags, where the job says what one fills. */
  readonly patchBags?: number;
  readonly levelBags?: number;
}

export interface FlatnessUnder {
  readonly straightedge: Ticks;
  readonly limit: Ticks;
  readonly pass: boolean;
  readonly worst?: Departure;
}
