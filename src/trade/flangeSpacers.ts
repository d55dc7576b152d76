import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** Height of a toilet flange over the finished tile, in inches: least, most, wanted; and the spacer rings sold. */
export const FLANGE: Fact<{ least: number; most: number; wanted: number; rings: readonly number[] }> = {
  value: { least: 0, most: 3 / 8, wanted: 1 / 4, rings: [1 / 2, 1 / 4] },
  mark: 'P',
  source: 'practice',
};

export interface FlangeResult {
  readonly pass: boolean;
  /** Spacer rings from the thickest down, in ticks. */
  readonly rings: readonly Ticks[];
  /** Height over the tile with them. */
  readonly raised: Ticks;
}

/**
 * Spacer rings that bring a flange nearest to the height wanted, within its limits. `height` is over the finished tile,
 * negative below it. `pass` is false where the flange stands too high, or where no rings bring it within. Ticks.
 *
 * @example
 * flangeSpacers(-4826) //=> { pass: true, rings: [4064, 2032], raised: 1270 }
 * flangeSpacers(4064) //=> { pass: false, rings: [], raised: 4064 }
 */
export function flangeSpacers(height: Ticks, wanted: Ticks = inches(FLANGE.value.wanted)): FlangeResult {
  const least = inches(FLANGE.value.least);
  const most = inches(FLANGE.value.most);
  const rings = FLANGE.value.rings.map(inches);
  const step = rings[rings.length - 1]!;
  const within = (h: Ticks) => h >= least && h <= most;
  if (within(height)) return { pass: true, rings: [], raised: height };
  const few = Math.max(0, Math.ceil((least - height) / step));
  const better = (a: Ticks, b: Ticks) => (within(b) && Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a);
  const raised = better(height + few * step, height + (few + 1) * step);
  if (!within(raised)) return { pass: false, rings: [], raised: height };
  return { pass: true, rings: ringsOf(raised - height, rings), raised };
}

function ringsOf(height: Ticks, rings: readonly Ticks[]): readonly Ticks[] {
  const thick = rings.find((ring) => ring <= height);
  return thick === undefined ? [] : [thick, ...ringsOf(height - thick, rings)];
}
