import type { Job } from '../job/Job.ts';
import { readOnOld } from '../job/readOnOld.ts';
import { type System, TICKS_PER_MM } from '../measure/index.ts';
import { dishOf, type FlatnessReading, SKIM, type Step, skimDepth } from '../trade/index.ts';
import type { Flatness } from './Flatness.ts';
import { fieldAreaM2 } from './fieldRuns.ts';
import { floorFlatness } from './floorFlatness.ts';
import { isFilled, tooHollow } from './isFilled.ts';
import type { Laid } from './laidSurfaces.ts';
import type { Material } from './Material.ts';
import { packages } from './rounded.ts';

/**
 * Patch or leveler of every floor that is filled: the figures of its base sheet where it was read on a grid, else what the gaps under
 * a straightedge leave to fill, else a skim over the floor.
 */
export function fillLines(job: Job, surfaces: readonly Laid[]): readonly Material[] {
  if (!isFilled(job)) return [];
  const { grid, fillBagLitres } = job.base;
  const bare = readOnOld(job.base) === undefined;
  return surfaces.flatMap(({ spec, layout }) => {
    const flatness = floorFlatness(job, spec, layout);
    if (flatness && flatness.patchLitres > 0) return [gridLine(flatness, fillBagLitres, bare)];
    // What was found with a grid belongs to the floor that it was read on.
    if (bare && grid && grid.surface !== spec.name && onlyGrid(job)) return [];
    const area = { surface: spec.name, areaM2: fieldAreaM2(layout) };
    const hollows = bare ? tooHollow(job) : job.base.flatness.filter(({ gap }) => gap > 0);
    const line =
      flatness === undefined && hollows.length > 0
        ? hollowLine(area, hollows)
        : skimLine(area, job.print.system);
    return [inBags(line, job, bare)];
  });
}

/** Whether nothing but a grid of readings says that the base is filled. */
function onlyGrid(job: Job): boolean {
  const { grid: _, ...base } = job.base;
  return !isFilled({ ...job, base });
}

function gridLine(flatness: Flatness, bagLitres: number | undefined, bare: boolean): Material {
  const { patchMean, patchLitres, levelMean, levelLitres, patchBags } = flatness;
  return {
    what: 'fill',
    sum: [
      { code: 'material.fill.sum.patch', figures: { patchMean, patchLitres } },
      { code: 'material.fill.sum.level', figures: { levelMean, levelLitres } },
      ...(bare ? [] : [AGAIN]),
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
    ? READ
    : {
        code: 'material.fill.sum.bags',
        figures: { bagLitres, patchBagCount: patchBags, levelBagCount: levelBags },
      };
}

const AGAIN: Step = { code: 'material.fill.sum.again', figures: {} };

const READ: Step = { code: 'material.fill.sum.read', figures: {} };

/** A floor with its area in square metres. */
interface Floor {
  readonly surface: string;
  readonly areaM2: number;
}

/** What is filled of a floor before bags are counted. */
type Filling = Pick<Material, 'sum' | 'mark' | 'source' | 'amount'>;

/** Hollows by their gap, the deepest first; together they take no more than the floor. */
function hollowLine({ surface, areaM2 }: Floor, hollows: readonly FlatnessReading[]): Filling {
  let left = areaM2;
  const sum = [...hollows]
    .sort((a, b) => b.gap - a.gap)
    .flatMap(({ gap, under }) => {
      const { areaM2: hollowM2, mean, litres: hollowLitres } = dishOf({ gap, under }, left);
      left -= hollowM2;
      const figures = { surface, gap, over: under, hollowM2, mean, hollowLitres };
      return hollowM2 > 0 ? [{ code: 'material.fill.sum.hollow', figures }] : [];
    });
  const amount = sum.reduce((all, { figures }) => all + figures.hollowLitres, 0);
  return { sum, mark: 'G', source: 'geometry', amount };
}

function skimLine({ surface, areaM2 }: Floor, system: System): Filling {
  const mean = skimDepth(system);
  const skimLitres = areaM2 * (mean / TICKS_PER_MM);
  return {
    sum: [{ code: 'material.fill.sum.skim', figures: { surface, areaM2, mean, skimLitres } }],
    mark: SKIM.mark,
    source: SKIM.source,
    amount: skimLitres,
  };
}

function inBags({ sum, ...filling }: Filling, { base }: Job, bare: boolean): Material {
  const { fillBagLitres: bagLitres } = base;
  const again: readonly Step[] = bare ? [] : [AGAIN];
  const line = { what: 'fill', ...filling, unit: 'litre' };
  if (bagLitres === undefined)
    return {
      ...line,
      sum: [...sum, ...again, READ],
      rate: { value: 1, unit: 'litre' },
      buy: filling.amount,
      buyUnit: 'litre',
    };
  const bagCount = packages(filling.amount / bagLitres);
  return {
    ...line,
    sum: [...sum, ...again, { code: 'material.fill.sum.fillBags', figures: { bagLitres, bagCount } }],
    rate: { value: bagLitres, unit: 'litrePerBag' },
    buy: bagCount,
    buyUnit: 'bag',
  };
}
