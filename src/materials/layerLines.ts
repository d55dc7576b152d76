import type { Job, Layer } from '../job/Job.ts';
import {
  densityAsPrinted,
  massAsPrinted,
  type System,
  TICKS_PER_MM,
  volumeAsPrinted,
} from '../measure/index.ts';
import { LAYER_WASTE, MORTAR_DENSITY } from '../trade/index.ts';
import { isCast, isSpread, layersUnder } from './layersUnder.ts';
import type { Material } from './Material.ts';
import { packages } from './rounded.ts';

/**
 * What the job puts under the tile, a line for each layer but the tile, which is the last, and the bed under it, which is the mortar
 * of the tally: board, membrane, the mortar between, a bed that falls to a drain. What a pack of it covers is known where the job says so; mortar comes in the
 * bags of the mortar under the tile.
 *
 * @param areaM2 area of all fields in square metres.
 */
export function layerLines(
  { base, products, print }: Pick<Job, 'base' | 'products' | 'print'>,
  areaM2: number,
): readonly Material[] {
  return layersUnder(base).map((layer) => {
    if (isCast(layer) && layer.packM2 === undefined) return castLine(layer, areaM2, print.system);
    return isSpread(layer) && !isCast(layer)
      ? spreadLine(layer, areaM2, products.mortar.bagKg, print.system)
      : laidLine(layer, areaM2);
  });
}

const READ = { code: 'material.layer.sum.read', figures: {} };

function laidLine({ name, packM2 }: Layer, areaM2: number): Material {
  const buyM2 = areaM2 * (1 + LAYER_WASTE.value);
  const packs = packM2 === undefined ? undefined : packages(buyM2 / packM2);
  return {
    what: 'layer',
    name,
    sum: [
      { code: 'material.layer.sum.area', figures: { areaM2, wasteShare: LAYER_WASTE.value, buyM2 } },
      packM2 === undefined || packs === undefined
        ? { code: 'material.layer.sum.noPack', figures: {} }
        : { code: 'material.layer.sum.packs', figures: { packM2, packCount: packs } },
      READ,
    ],
    rate: { value: LAYER_WASTE.value, unit: 'share' },
    mark: LAYER_WASTE.mark,
    source: LAYER_WASTE.source,
    amount: areaM2,
    unit: 'm2',
    ...(packs === undefined ? { buy: buyM2, buyUnit: 'm2' } : { buy: packs, buyUnit: 'pack' }),
  };
}

/** What is poured or floated is bought by its volume: which sand, cement or bag makes it is told by its own sheet. */
function castLine({ name, thickness, waitHours }: Layer, areaM2: number, system: System): Material {
  const bedLitres = volumeAsPrinted(areaM2 * (thickness / TICKS_PER_MM), system);
  const buyLitres = volumeAsPrinted(bedLitres * (1 + LAYER_WASTE.value), system);
  return {
    what: 'layer',
    name,
    sum: [
      {
        code: 'material.layer.sum.cast',
        figures: { thickness, areaM2, bedLitres, wasteShare: LAYER_WASTE.value, buyLitres },
      },
      { code: 'material.layer.sum.castRead', figures: {} },
      ...(waitHours === undefined ? [{ code: 'material.layer.sum.castCures', figures: {} }] : []),
    ],
    rate: { value: LAYER_WASTE.value, unit: 'share' },
    mark: LAYER_WASTE.mark,
    source: LAYER_WASTE.source,
    amount: bedLitres,
    unit: 'litre',
    buy: buyLitres,
    buyUnit: 'litre',
  };
}

/**
 * A layer of mortar is as much as it is thick: litres are geometry, the powder in them is the figure that the notch goes by. Each step
 * goes on from what the one before it prints, so that the sum adds up on paper.
 */
function spreadLine({ name, thickness }: Layer, areaM2: number, bagKg: number, system: System): Material {
  const bedLitres = areaM2 * (thickness / TICKS_PER_MM);
  const density = densityAsPrinted(MORTAR_DENSITY.value, system);
  const laidKg = massAsPrinted(volumeAsPrinted(bedLitres, system) * density, system);
  const massKg = massAsPrinted(laidKg * (1 + LAYER_WASTE.value), system);
  const bagCount = packages(massKg / massAsPrinted(bagKg, system));
  return {
    what: 'layer',
    name,
    sum: [
      {
        code: 'material.layer.sum.bed',
        figures: { areaM2, thickness, bedLitres, mortarKgPerLitre: MORTAR_DENSITY.value, laidKg },
      },
      {
        code: 'material.layer.sum.bags',
        figures: { laidKg, wasteShare: LAYER_WASTE.value, massKg, bagCount, bagKg },
      },
      READ,
    ],
    rate: { value: MORTAR_DENSITY.value, unit: 'kgPerLitre' },
    mark: MORTAR_DENSITY.mark,
    source: MORTAR_DENSITY.source,
    amount: laidKg,
    unit: 'kg',
    buy: bagCount,
    buyUnit: 'bag',
  };
}
