import type { Job, Layer, MortarSpec } from '../job/Job.ts';
import type { System } from '../measure/index.ts';
import { bondNotch, MORTAR_COVERAGE, MORTAR_DENSITY, mortarRate } from '../trade/index.ts';
import { isBonded, isCast, isSpread, layersUnder } from './layersUnder.ts';
import type { Material } from './Material.ts';
import { mortarSum } from './mortarLine.ts';
import { packages, rounded } from './rounded.ts';

/**
 * Mortar that bonds a membrane or a board to what lies under it, a line for each: none where the job puts mortar there as a layer of
 * its own, which is told by its thickness.
 *
 * @param areaM2 area of all fields in square metres.
 */
export function bondLines(
  { base, products, print }: Pick<Job, 'base' | 'products' | 'print'>,
  areaM2: number,
): readonly Material[] {
  const under = layersUnder(base);
  return under.flatMap((layer, i) =>
    isBonded(layer) && !isGiven(under, i) ? [bondLine(layer, products.mortar, areaM2, print.system)] : [],
  );
}

/** Whether the job has mortar for a layer: under it, or told after it where that is not the mortar of the next layer. */
function isGiven(under: readonly Layer[], i: number): boolean {
  const [below, above, next] = [under[i - 1], under[i + 1], under[i + 2]];
  return (
    (below !== undefined && isBondCoat(below)) ||
    (above !== undefined && isBondCoat(above) && !(next && isBonded(next)))
  );
}

const isBondCoat = (layer: Layer) => isSpread(layer) && !isCast(layer);

/** Reckoned as the mortar under the tile, but by a notch of its own and our table: what the job says a bag covers is for its own notch. */
function bondLine(
  { name, thickness }: Layer,
  { bagKg }: MortarSpec,
  areaM2: number,
  system: System,
): Material {
  const use = { notch: bondNotch(system), bagKg, backButter: false };
  const { steps, bags, kgPerM2 } = mortarSum(use, areaM2);
  const fact = mortarRate(use).rules === 'bag' ? MORTAR_COVERAGE : MORTAR_DENSITY;
  return {
    what: 'bond',
    name,
    sum: [
      { code: 'material.bond.sum.why', figures: { thickness } },
      ...steps,
      { code: 'material.bond.sum.read', figures: {} },
    ],
    rate: { value: areaM2 > 0 ? rounded(kgPerM2, 3) : 0, unit: 'kgPerM2' },
    mark: fact.mark,
    source: fact.source,
    amount: bags * bagKg,
    unit: 'kg',
    buy: packages(bags),
    buyUnit: 'bag',
  };
}
