import type { BaseSpec, Layer } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';

/** Sum of the thickness of layers, in ticks. */
export function thicknessOf(layers: readonly Layer[]): Ticks {
  return layers.reduce((sum, { thickness }) => sum + thickness, 0);
}

/**
 * Height over the bare base of the top of a layer as the floor was found: what is kept from the base up, then what will
 * be removed. The base itself, or a name that no layer bears, is at 0. Ticks.
 */
export function topOf(base: BaseSpec, name: string): Ticks {
  const found = [...base.kept, ...base.removed];
  const asked = name.trim().toLowerCase();
  const exact = found.findIndex((layer) => layer.name.toLowerCase() === asked);
  const at =
    exact >= 0 ? exact : found.findIndex((layer) => asked !== '' && layer.name.toLowerCase().includes(asked));
  return at < 0 || asked === base.below.toLowerCase() ? 0 : thicknessOf(found.slice(0, at + 1));
}
