import type { Job } from '../job/Job.ts';
import type { Step } from '../trade/index.ts';
import type { Flatness } from './Flatness.ts';
import { floorFlatness } from './floorFlatness.ts';
import type { Laid } from './laidSurfaces.ts';
import type { Material } from './Material.ts';

/** Patch for the hollows of a floor that was read on a grid, or leveler over all of it: the figures of its base sheet. */
export function fillLines(job: Job, surfaces: readonly Laid[]): readonly Material[] {
  return surfaces.flatMap(({ spec, layout }) => {
    const flatness = floorFlatness(job, spec, layout);
    return flatness && flatness.patchLitres > 0 ? [fillLine(flatness, job.base.fillBagLitres)] : [];
  });
}

function fillLine(flatness: Flatness, bagLitres: number | undefined): Material {
  const { patchMean, patchLitres, levelMean, levelLitres, patchBags } = flatness;
  return {
    what: 'fill',
    sum: [
      { code: 'material.fill.sum.patch', figures: { patchMean, patchLitres } },
      { code: 'material.fill.sum.level', figures: { levelMean, levelLitres } },
      bagStep(flatness, bagLitres),
    ],
    rate: bagLitres ? { value: bagLitres, unit: 'litrePerBag' } : { value: 1, unit: 'litre' },
    mark: 'G',
    source: 'geometry',
    amount: patchLitres,
    unit: 'litre',
    ...(patchBags === undefined
      ? { buy: patchLitres, buyUnit: 'litre' }
      : { buy: patchBags, buyUnit: 'bag' }),
  };
}

function bagStep({ patchBags, levelBags }: Flatness, bagLitres: number | undefined): Step {
  return bagLitres === undefined || patchBags === undefined || levelBags === undefined
    ? { code: 'material.fill.sum.read', figures: {} }
    : {
        code: 'material.fill.sum.bags',
        figures: { bagLitres, patchBagCount: patchBags, levelBagCount: levelBags },
      };
}
