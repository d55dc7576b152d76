import type { Fact } from './Fact.ts';

export type Exposure = 'dry' | 'wet' | 'sun' | 'outside';

/** Share of the tile's back that must be in mortar; judged by lifting `lift` tiles. `bed`: least mortar left under it, inches. */
export const CONTACT: Fact<{ dry: number; wet: number; lift: number; bed: number }> = {
  value: { dry: 0.8, wet: 0.95, lift: 3, bed: 3 / 32 },
  mark: 'S',
  source: 'ANSI A108.5',
};

/**
 * Share of the back of a tile that must be in mortar.
 *
 * @example
 * contactShare('dry') //=> 0.8
 * contactShare('outside') //=> 0.95
 */
export function contactShare(exposure: Exposure): number {
  return exposure === 'wet' || exposure === 'outside' ? CONTACT.value.wet : CONTACT.value.dry;
}
