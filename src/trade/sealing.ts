import type { Fact } from './Fact.ts';

export type TileMaterial = 'porcelain' | 'ceramic' | 'stone' | 'cement' | 'glass';

/** What takes a sealer: cement grout, and tile that is porous; porous tile before grouting where the grout contrasts. */
export const SEALING: Fact<{
  grout: Readonly<Record<'cement' | 'epoxy', boolean>>;
  porous: readonly TileMaterial[];
}> = {
  value: { grout: { cement: true, epoxy: false }, porous: ['stone', 'cement', 'ceramic'] },
  mark: 'P',
  source: 'practice',
};

/** Months until the water-drop test, on dry floors and in showers. */
export const DROP_TEST: Fact<{ dry: number; wet: number }> = {
  value: { dry: 24, wet: 12 },
  mark: 'P',
  source: 'practice',
};

export interface SealingNeed {
  readonly grout: boolean;
  readonly tile: boolean;
  readonly beforeGrouting: boolean;
}

/**
 * What needs a sealer. Glazed tile, glass and porcelain do not; unglazed ceramic, cement tile and stone do.
 *
 * @example
 * sealingNeed('ceramic', true, 'cement') //=> { grout: true, tile: false, beforeGrouting: false }
 * sealingNeed('stone', false, 'epoxy') //=> { grout: false, tile: true, beforeGrouting: true }
 */
export function sealingNeed(material: TileMaterial, glazed: boolean, grout: 'cement' | 'epoxy'): SealingNeed {
  const tile = !glazed && SEALING.value.porous.includes(material);
  return { grout: SEALING.value.grout[grout], tile, beforeGrouting: tile };
}

/**
 * Months until the sealer is tested with a drop of water.
 *
 * @example
 * dropTestMonths(true) //=> 12
 */
export function dropTestMonths(wet: boolean): number {
  return wet ? DROP_TEST.value.wet : DROP_TEST.value.dry;
}
