import { TICKS_PER_INCH, type Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** What a start may be worse by in one figure for the sake of the next, and what it must bear; lengths in ticks. A job may set each. */
export interface StartTolerance {
  /** Wall in sight with strips under the least. */
  readonly strips: Ticks;
  /** Wall in sight times what its cuts lack of half a tile. */
  readonly halves: Ticks;
  /** Width of the narrowest cut. */
  readonly narrowest: Ticks;
  /** Width by which the smallest piece may be less where that takes fewer tiles. */
  readonly tiles: Ticks;
  /** By how much a start may then be further off balance. */
  readonly balance: Ticks;
  /** By how much chalk lines may be off and all figures still hold. */
  readonly lines: Ticks;
}

export const START_TOLERANCE: Fact<StartTolerance> = {
  value: {
    strips: TICKS_PER_INCH,
    halves: 3 * TICKS_PER_INCH,
    narrowest: 3 * TICKS_PER_INCH,
    tiles: TICKS_PER_INCH / 8,
    balance: 0,
    lines: TICKS_PER_INCH / 16,
  },
  mark: 'P',
  source: 'practice',
};

/** A joint may be eased by no more than this, and never under the second; ticks. */
export const EASED_JOINT: Fact<{ most: Ticks; least: Ticks }> = {
  value: { most: TICKS_PER_INCH / 32, least: TICKS_PER_INCH / 16 },
  mark: 'P',
  source: 'practice',
};
