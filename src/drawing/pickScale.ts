import type { System, Ticks } from '../measure/index.ts';
import type { Space } from './Drawing.ts';
import { mmPerTick } from './Scale.ts';

/** Scales that a rule for the job's units can read, then last resorts for halls and for two drawings side by side. */
export const ratios: Readonly<Record<System, readonly number[]>> = {
  inches: [4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 384],
  mm: [5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 200],
};

export type Orientation = 'portrait' | 'landscape';

/**
 * The largest scale at which something of that size, in ticks, fits a space; undefined when none of the list does.
 *
 * @example pickRatio({ width: 812800, height: 487680 }, { widthMm: 180, heightMm: 120 }, 'inches') //=> 16
 */
export function pickRatio(
  size: { readonly width: Ticks; readonly height: Ticks },
  space: Space,
  system: System,
): number | undefined {
  return ratios[system].find(
    (ratio) =>
      size.width * mmPerTick(ratio) <= space.widthMm + 1e-9 &&
      size.height * mmPerTick(ratio) <= space.heightMm + 1e-9,
  );
}

/**
 * Scale and orientation for a drawing that may have a page of its own. Portrait unless landscape shows it larger; what
 * fits neither is drawn at the last scale, landscape where it is wider than high.
 */
export function pickScale(
  size: { readonly width: Ticks; readonly height: Ticks },
  spaces: Readonly<Record<Orientation, Space>>,
  system: System,
): { readonly ratio: number; readonly orientation: Orientation } {
  const upright = pickRatio(size, spaces.portrait, system);
  const flat = pickRatio(size, spaces.landscape, system);
  const last = ratios[system].at(-1)!;
  if (upright === undefined && flat === undefined)
    return { ratio: last, orientation: size.width > size.height ? 'landscape' : 'portrait' };
  if (flat !== undefined && (upright === undefined || flat < upright))
    return { ratio: flat, orientation: 'landscape' };
  return { ratio: upright!, orientation: 'portrait' };
}
