import type { MortarSpec } from '../job/Job.ts';
import {
  bagCoverage,
  bedDepth,
  MORTAR_COVERAGE,
  MORTAR_DENSITY,
  MORTAR_WASTE,
  mortarBags,
  notchMass,
  type Step,
  TROWEL_ANGLE,
} from '../trade/index.ts';
import type { Material } from './Material.ts';
import { packages, rounded } from './rounded.ts';

/**
 * Mortar for an area in square metres, summed twice: by what a bag covers, and by what the notch leaves on the floor.
 * The larger is bought. A range on the bag counts at its low end, since that is what a floor out of true takes.
 */
export function mortarLine(mortar: MortarSpec, areaM2: number): Material {
  const cover = mortar.coversM2?.[0] ?? bagCoverage(mortar.notch, mortar.bagKg);
  const perM2 = notchMass(mortar.notch);
  const byBag = mortarBags(areaM2, cover, mortar.backButter);
  const byNotch = (areaM2 * perM2 * (1 + MORTAR_WASTE.value.waste)) / mortar.bagKg;
  const larger = Math.max(byBag, byNotch);
  const bagRules = byBag >= byNotch;
  const rate = bagRules ? (byBag * mortar.bagKg) / areaM2 : (byNotch * mortar.bagKg) / areaM2;
  const fact = bagRules ? MORTAR_COVERAGE : MORTAR_DENSITY;
  const fromSheet = bagRules && mortar.coversM2 !== undefined;
  return {
    what: 'mortar',
    ...(mortar.name === undefined ? {} : { name: mortar.name }),
    sum: [
      { code: 'material.mortar.sum.area', figures: { areaM2 } },
      bagStep(mortar, cover, byBag),
      notchStep(mortar, perM2, byNotch),
      {
        code: `material.mortar.sum.${bagRules ? 'bagRules' : 'notchRules'}`,
        figures: { bagCount: packages(larger), bagKg: mortar.bagKg },
      },
      { code: 'material.mortar.sum.spareBag', figures: {} },
    ],
    rate: { value: areaM2 > 0 ? rounded(rate, 3) : 0, unit: 'kgPerM2' },
    mark: fromSheet ? 'job' : fact.mark,
    source: fromSheet ? 'job' : fact.source,
    amount: larger * mortar.bagKg,
    unit: 'kg',
    buy: packages(larger),
    buyUnit: 'bag',
  };
}

function bagStep(mortar: MortarSpec, cover: number, bags: number): Step {
  const { waste, backButter } = MORTAR_WASTE.value;
  const figures = { coverM2: cover, bagKg: mortar.bagKg, wasteShare: waste, bagCount: rounded(bags) };
  return mortar.backButter
    ? { code: 'material.mortar.sum.bagRateButtered', figures: { ...figures, keptShare: backButter } }
    : { code: 'material.mortar.sum.bagRate', figures };
}

function notchStep({ notch, bagKg }: MortarSpec, perM2: number, bags: number): Step {
  return {
    code: `material.mortar.sum.${notch.kind === 'v' ? 'vNotch' : 'squareNotch'}`,
    figures: {
      notchWidth: notch.width,
      notchDepth: notch.depth,
      notchSpace: notch.space,
      angleNumber: TROWEL_ANGLE.value,
      bed: Math.round(bedDepth(notch, TROWEL_ANGLE.value)),
      mortarKgPerM2: rounded(perM2),
      mortarKgPerLitre: MORTAR_DENSITY.value,
      wasteShare: MORTAR_WASTE.value.waste,
      bagKg,
      bagCount: rounded(bags),
    },
  };
}
