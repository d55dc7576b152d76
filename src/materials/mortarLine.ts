import type { MortarSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import {
  bedDepth,
  MORTAR_COVERAGE,
  MORTAR_DENSITY,
  MORTAR_WASTE,
  type MortarRate,
  type MortarUse,
  mortarRate,
  type Step,
  TROWEL_ANGLE,
} from '../trade/index.ts';
import type { Material } from './Material.ts';
import { packages, rounded } from './rounded.ts';

/**
 * Mortar for an area in square metres, summed twice: by what a bag covers, and by what the notch leaves on the floor. The larger is
 * the rate by which zones share it out too; a part is bought beyond it.
 *
 * @param stated bed that the heights count with, where the job states one: told beside the notch's, which counts here.
 */
export function mortarLine(mortar: MortarSpec, areaM2: number, stated?: Ticks): Material {
  const rate = mortarRate(mortar);
  const fact = rate.rules === 'bag' ? MORTAR_COVERAGE : MORTAR_DENSITY;
  const fromSheet = rate.rules === 'bag' && mortar.coversM2 !== undefined;
  const told = stated === undefined ? [] : [{ code: 'material.mortar.sum.stated', figures: { stated } }];
  const { steps, bags, kgPerM2 } = mortarSum(mortar, areaM2, told);
  return {
    what: 'mortar',
    ...(mortar.name === undefined ? {} : { name: mortar.name }),
    sum: [...steps, zonesStep(areaM2, rate), { code: 'material.mortar.sum.spareBag', figures: {} }],
    rate: { value: areaM2 > 0 ? rounded(kgPerM2, 3) : 0, unit: 'kgPerM2' },
    mark: fromSheet ? 'job' : fact.mark,
    source: fromSheet ? 'job' : fact.source,
    amount: bags * mortar.bagKg,
    unit: 'kg',
    buy: packages(bags),
    buyUnit: 'bag',
  };
}

/**
 * Mortar of a notch for an area in square metres, step by step: by the bag, by the notch, and the larger, which rules; bags and the
 * powder on a square metre with the part that is bought beyond it.
 *
 * @param told steps that stand before the one that tells which rules.
 */
export function mortarSum(
  mortar: MortarUse,
  areaM2: number,
  told: readonly Step[] = [],
): { readonly steps: readonly Step[]; readonly bags: number; readonly kgPerM2: number } {
  const rate = mortarRate(mortar);
  const bought = 1 + MORTAR_WASTE.value.waste;
  const bagsAt = (kgPerM2: number) => (areaM2 * kgPerM2 * bought) / mortar.bagKg;
  const bags = bagsAt(rate.kgPerM2);
  const steps = [
    { code: 'material.mortar.sum.area', figures: { areaM2 } },
    bagStep(mortar, rate, bagsAt(rate.byBag)),
    notchStep(mortar, rate, bagsAt(rate.byNotch)),
    ...told,
    {
      code: `material.mortar.sum.${rate.rules}Rules`,
      figures: { bagCount: packages(bags), bagKg: mortar.bagKg },
    },
  ];
  return { steps, bags, kgPerM2: rate.kgPerM2 * bought };
}

function bagStep(mortar: MortarUse, { coverM2 }: MortarRate, bags: number): Step {
  const { waste, backButter } = MORTAR_WASTE.value;
  const figures = { coverM2, bagKg: mortar.bagKg, wasteShare: waste, bagCount: rounded(bags) };
  return mortar.backButter
    ? { code: 'material.mortar.sum.bagRateButtered', figures: { ...figures, keptShare: backButter } }
    : { code: 'material.mortar.sum.bagRate', figures };
}

function notchStep({ notch, bagKg }: MortarUse, { byNotch }: MortarRate, bags: number): Step {
  return {
    code: `material.mortar.sum.${notch.kind === 'v' ? 'vNotch' : 'squareNotch'}`,
    figures: {
      notchWidth: notch.width,
      notchDepth: notch.depth,
      notchSpace: notch.space,
      angleNumber: TROWEL_ANGLE.value,
      bed: Math.round(bedDepth(notch, TROWEL_ANGLE.value)),
      mortarKgPerM2: rounded(byNotch),
      mortarKgPerLitre: MORTAR_DENSITY.value,
      wasteShare: MORTAR_WASTE.value.waste,
      bagKg,
      bagCount: rounded(bags),
    },
  };
}

/** What the zones share out, before anything is bought beyond it. */
function zonesStep(areaM2: number, { kgPerM2 }: MortarRate): Step {
  const figures = { mortarKgPerM2: rounded(kgPerM2), areaM2, massKg: areaM2 * kgPerM2 };
  return {
    code: 'material.mortar.sum.zones',
    figures: { ...figures, wasteShare: MORTAR_WASTE.value.waste },
  };
}
