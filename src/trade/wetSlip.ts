import type { Fact } from './Fact.ts';

/** Wet dynamic friction that the face of a tile must reach. */
export const WET_SLIP: Fact<{ level: number; publicShower: number; outside: number }> = {
  value: { level: 0.42, publicShower: 0.5, outside: 0.55 },
  mark: 'S',
  source: 'ANSI A326.3',
};
