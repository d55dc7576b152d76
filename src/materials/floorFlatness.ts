import type { Job, SurfaceSpec } from '../job/Job.ts';
import { longestSide } from '../job/longestSide.ts';
import type { Layout } from '../layout/Layout.ts';
import { tilesLaid } from '../layout/tilesLaid.ts';
import type { Flatness } from './Flatness.ts';
import { fieldAreaM2 } from './fieldRuns.ts';
import { makeFlatness } from './makeFlatness.ts';

/** What the readings on a grid say of a floor and its tile; nothing where they lie on another floor or nobody read any. */
export function floorFlatness(
  { base, tiles, joint, print }: Pick<Job, 'base' | 'tiles' | 'joint' | 'print'>,
  surface: SurfaceSpec,
  layout: Layout,
): Flatness | undefined {
  const { grid, fillBagLitres } = base;
  if (grid?.surface !== surface.name) return undefined;
  const keys = new Set(tilesLaid(layout));
  const laid = tiles.filter(({ key }) => keys.has(key));
  if (laid.length === 0) return undefined;
  return makeFlatness(grid, {
    longest: longestSide(laid, joint),
    areaM2: fieldAreaM2(layout),
    system: print.system,
    ...(fillBagLitres === undefined ? {} : { bagLitres: fillBagLitres }),
  });
}
