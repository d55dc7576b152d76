import type { Fact } from './Fact.ts';

/** Width in inches and in millimetres under which an offcut is not kept for another piece: it breaks in the clamp or in the pile. */
export const LEAST_OFFCUT: Fact<{ readonly inches: number; readonly mm: number }> = {
  value: { inches: 1, mm: 25 },
  mark: 'P',
  source: 'practice',
};

/** How many tiles more, as a share of those needed, a smaller pile of offcuts may cost. */
export const SMALL_PILE_COSTS: Fact<number> = { value: 0.01, mark: 'P', source: 'practice' };
