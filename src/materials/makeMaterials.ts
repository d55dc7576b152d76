import type { Job } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { TilePlan } from '../tiles/TilePlan.ts';
import { backingLines } from './backingLines.ts';
import { bondLines } from './bondLines.ts';
import type { CarriedRun } from './carriedRuns.ts';
import { fieldAreaM2 } from './fieldRuns.ts';
import { fillLines } from './fillLines.ts';
import { groutLine } from './groutLine.ts';
import { jointDepth } from './jointDepth.ts';
import { type Laid, laidSurfaces } from './laidSurfaces.ts';
import { layerLines } from './layerLines.ts';
import type { Material } from './Material.ts';
import { makeHeights } from './makeHeights.ts';
import { type MortarElse, mortarLine } from './mortarLine.ts';
import { orderedBed, otherBed } from './orderedBed.ts';
import { profileLine } from './profileLine.ts';
import { ringLines } from './ringLines.ts';
import { sealantLine } from './sealantLine.ts';
import { sealerLine } from './sealerLine.ts';
import { softJoints } from './softJoints.ts';
import { statedBed } from './statedBed.ts';
import { tileLine } from './tileLine.ts';
import { trowelAsked } from './trowelAsked.ts';

/**
 * The material tally of a job: tile, what levels the base and lies under the tile, mortar, grout, sealant, what backs it, edge profiles, sealer and rings, each with its sum step by step, the rate
 * it rests on and where that comes from. Plans are by the tile's key; `carried` is what runs over joints of the base.
 */
export function makeMaterials(
  job: Job,
  layouts: readonly Layout[],
  plans: Readonly<Record<string, TilePlan>>,
  carried: readonly CarriedRun[] = [],
): readonly Material[] {
  const surfaces = laidSurfaces(job, layouts);
  if (surfaces.length === 0) return [];
  const areaM2 = surfaces.reduce((sum, { layout }) => sum + fieldAreaM2(layout), 0);
  const overBase = carried.map(({ surface, ...run }) => {
    const laid = surfaces.find(({ spec }) => spec.name === surface) ?? surfaces[0]!;
    return { kind: 'carried' as const, surface: laid.spec.name, ...run, depth: jointDepth(job, laid.tiles) };
  });
  const soft = [
    ...surfaces.flatMap((laid) => softJoints(laid, job)),
    ...overBase.filter(({ isOver }) => isOver),
  ];
  const open = overBase.filter(({ isOver }) => !isOver);
  const bonds = bondLines(job, areaM2);
  return [
    ...job.tiles.flatMap((tile) => {
      const plan = plans[tile.key];
      return plan ? [tileLine(tile, plan)] : [];
    }),
    ...fillLines(job, surfaces),
    ...layerLines(job, areaM2),
    ...bonds,
    mortarLine(job.products.mortar, areaM2, {
      stated: otherBed(job),
      ordered: orderedBed(job),
      larger: largerNotch(job, surfaces),
      bonds,
    }),
    groutLine(job.products.grout, surfaces),
    ...sealantLine(job.products.sealant, soft, open),
    ...backingLines(soft, job.print.system, open),
    ...profileLine(surfaces, job.print.system),
    ...sealerLine(job.products, surfaces),
    ...ringLines(makeHeights(job).results),
  ];
}

/** The deepest notch that is advised instead of the job's, where its own may not fill under a tile that is laid, and the bed that is asked of either. */
function largerNotch(job: Job, surfaces: readonly Laid[]): MortarElse['larger'] {
  const short = surfaces.map((laid) => trowelAsked(job, laid)).filter(({ pass }) => !pass);
  const [deepest] = short.sort((a, b) => b.advisedBed - a.advisedBed);
  if (!deepest) return undefined;
  return { notch: deepest.advised, bed: Math.max(...short.map(({ least }) => least), statedBed(job) ?? 0) };
}
