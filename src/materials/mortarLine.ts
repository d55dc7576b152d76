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

/** What else bears on a floor's mortar: the bed that the heights count with, where another is stated, and that which is ordered; a deeper notch that may be needed, with the bed asked of it; mortar under layers, which may come from the same bags. */
export interface MortarElse {
  readonly stated?: Ticks | undefined;
  readonly ordered?: Ticks | undefined;
  readonly larger?: Pick<MortarUse, 'notch' | 'bed'> | undefined;
  readonly bonds?: readonly Material[];
}

/**
 * Mortar for an area in square metres, summed twice: by what a bag covers, and by what the notch leaves on the floor. The larger is
 * the rate by which zones share it out too; a part is bought beyond it. Where a deeper notch may be needed it is bought for that.
 */
export function mortarLine(
  spec: MortarSpec,
  areaM2: number,
  { stated, ordered, larger, bonds = [] }: MortarElse = {},
): Material {
  const mortar = ordered === undefined ? spec : { ...spec, bed: ordered };
  const told =
    stated === undefined || ordered !== undefined
      ? []
      : [{ code: 'material.mortar.sum.stated', figures: { stated } }];
  const own = mortarSum(mortar, areaM2, told);
  // What the job says that a bag covers is for its own notch.
  const { bagKg, backButter } = mortar;
  const deeper = larger && { ...larger, bagKg, backButter };
  const other = deeper && mortarSum(deeper, areaM2);
  const takesMore = other !== undefined && other.bags > own.bags;
  const { bags, kgPerM2 } = takesMore ? other : own;
  return {
    what: 'mortar',
    ...(mortar.name === undefined ? {} : { name: mortar.name }),
    sum: [
      ...own.steps,
      zonesStep(areaM2, mortarRate(mortar)),
      ...(deeper ? [largerStep(deeper, other!.bags, bags)] : []),
      ...togetherStep(bags * bagKg, bagKg, bonds),
      { code: 'material.mortar.sum.spareBag', figures: {} },
    ],
    rate: { value: areaM2 > 0 ? rounded(kgPerM2, 3) : 0, unit: 'kgPerM2' },
    ...sourceOf(takesMore ? deeper! : mortar),
    amount: bags * bagKg,
    unit: 'kg',
    buy: packages(bags),
    buyUnit: 'bag',
  };
}

/** What mortar and that under layers take out of the same bags, where that is fewer bags than each out of its own. */
function togetherStep(amount: number, bagKg: number, bonds: readonly Material[]): readonly Step[] {
  const massKg = bonds.reduce((sum, bond) => sum + bond.amount, amount);
  const bagCount = packages(massKg / bagKg);
  const apartCount = bonds.reduce((sum, { buy }) => sum + buy, packages(amount / bagKg));
  return bagCount < apartCount
    ? [{ code: 'material.mortar.sum.together', figures: { massKg, bagCount, apartCount } }]
    : [];
}

/** Where the rate of a mortar comes from: the bag's own sheet, our table, or the density of the bed. */
function sourceOf(mortar: MortarUse): Pick<Material, 'mark' | 'source'> {
  const { rules } = mortarRate(mortar);
  if (rules === 'bag' && mortar.coversM2 !== undefined) return { mark: 'job', source: 'job' };
  const { mark, source } = rules === 'bag' ? MORTAR_COVERAGE : MORTAR_DENSITY;
  return { mark, source };
}

/** What a deeper notch takes, should it be needed, and what is bought for both. */
function largerStep(mortar: MortarUse, bags: number, bought: number): Step {
  const { notch, bagKg } = mortar;
  return {
    code: 'material.mortar.sum.larger',
    figures: {
      notchKind: notch.kind,
      notchWidth: notch.width,
      notchDepth: notch.depth,
      mortarKgPerM2: rounded(mortarRate(mortar).kgPerM2),
      wasteShare: MORTAR_WASTE.value.waste,
      bagKg,
      bagCount: rounded(bags),
      boughtCount: packages(bought),
    },
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
    notchStep(mortar, bagsAt),
    ...bedStep(mortar, rate, bagsAt(rate.byNotch)),
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

/** By the notch as the trowel is usually held. */
function notchStep({ bed: _, ...mortar }: MortarUse, bagsAt: (kgPerM2: number) => number): Step {
  const { notch, bagKg, backButter } = mortar;
  const { byNotch } = mortarRate(mortar);
  return {
    code: backButter
      ? `material.mortar.sum.${notch.kind === 'v' ? 'vNotchButtered' : 'squareNotchButtered'}`
      : `material.mortar.sum.${notch.kind === 'v' ? 'vNotch' : 'squareNotch'}`,
    figures: {
      notchWidth: notch.width,
      notchDepth: notch.depth,
      notchSpace: notch.space,
      angleNumber: TROWEL_ANGLE.value,
      bed: Math.round(bedDepth(notch, TROWEL_ANGLE.value)),
      ...(backButter ? { keptShare: MORTAR_WASTE.value.backButter } : {}),
      mortarKgPerM2: rounded(byNotch),
      mortarKgPerLitre: MORTAR_DENSITY.value,
      wasteShare: MORTAR_WASTE.value.waste,
      bagKg,
      bagCount: rounded(bagsAt(byNotch)),
    },
  };
}

/** By the bed that is ordered, where it is deeper than that. */
function bedStep({ bed, bagKg }: MortarUse, { byNotch }: MortarRate, bags: number): readonly Step[] {
  if (bed === undefined) return [];
  const figures = { stated: bed, mortarKgPerM2: rounded(byNotch), wasteShare: MORTAR_WASTE.value.waste };
  return [{ code: 'material.mortar.sum.ordered', figures: { ...figures, bagKg, bagCount: rounded(bags) } }];
}

/** What the zones share out, before anything is bought beyond it. */
function zonesStep(areaM2: number, { kgPerM2 }: MortarRate): Step {
  const figures = { mortarKgPerM2: rounded(kgPerM2), areaM2, massKg: areaM2 * kgPerM2 };
  return {
    code: 'material.mortar.sum.zones',
    figures: { ...figures, wasteShare: MORTAR_WASTE.value.waste },
  };
}
