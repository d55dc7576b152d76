import type { Fact } from './Fact.ts';

const DAY = 24;

/** Hours from the sample to the laboratory's answer, counted through the weekend. */
export const LABORATORY_WAIT: Fact<number> = { value: 7 * DAY, mark: 'P', source: 'practice' };

/** Hours of work to take out what stands on the floor, all of it. */
export const TAKE_OUT: Fact<number> = { value: 2, mark: 'P', source: 'practice' };

/** Square metres in an hour: one layer of an old floor lifted, the base patched or leveled, one new layer laid. */
export const PREPARING_PACE: Fact<{ lift: number; fill: number; layer: number }> = {
  value: { lift: 1.5, fill: 5, layer: 2.5 },
  mark: 'P',
  source: 'practice',
};

/** Hours that patch or leveler, and the mortar under a board or membrane, are left alone before the next step. */
export const PREPARING_WAIT: Fact<{ fill: number; layer: number }> = {
  value: { fill: 24, layer: 24 },
  mark: 'P',
  source: 'practice',
};

/** Thickness in inches over which mortar under a board or membrane is a bed that cures by itself, and no bond coat that goes with it. */
export const BOND_COAT_MOST: Fact<number> = { value: 1 / 2, mark: 'P', source: 'practice' };

/** Hours that the heating of a floor is off before the first mortar or patch, so that the base is cold. */
export const HEAT_OFF: Fact<number> = { value: 24, mark: 'P', source: 'practice' };
