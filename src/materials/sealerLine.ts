import type { Products } from '../job/Job.ts';
import { sealingNeed } from '../trade/index.ts';
import { fieldAreaM2 } from './fieldRuns.ts';
import type { Laid } from './laidSurfaces.ts';
import type { Material } from './Material.ts';
import { packages } from './rounded.ts';

/**
 * Sealer for the surfaces whose grout or tile needs one, twice where both do: porous tile before grouting, all of it after. Nothing
 * where none does or the job has chosen none.
 */
export function sealerLine({ sealer, grout }: Products, surfaces: readonly Laid[]): readonly Material[] {
  const areaOf = (what: 'grout' | 'tile') =>
    surfaces
      .filter(({ tiles }) =>
        tiles.some(({ material, glazed }) => sealingNeed(material, glazed, grout.kind)[what]),
      )
      .reduce((sum, { layout }) => sum + fieldAreaM2(layout), 0);
  const [tileM2, groutM2] = [areaOf('tile'), areaOf('grout')];
  const areaM2 = tileM2 + groutM2;
  if (sealer.kind === 'none' || areaM2 === 0) return [];
  const litres = areaM2 / sealer.coversM2PerLitre;
  const bottles = packages(litres / sealer.bottleLitres);
  const fromSheet = sealer.stated.includes('coversM2PerLitre');
  return [
    {
      what: 'sealer',
      ...(sealer.name === undefined ? {} : { name: sealer.name }),
      sum: [
        ...(tileM2 > 0 && groutM2 > 0
          ? [{ code: 'material.sealer.sum.twice', figures: { tileM2, groutM2, areaM2 } }]
          : []),
        {
          code: 'material.sealer.sum.area',
          figures: {
            areaM2,
            sealerM2PerLitre: sealer.coversM2PerLitre,
            sealerLitres: litres,
            bottleLitres: sealer.bottleLitres,
            bottleCount: bottles,
          },
        },
        ...(fromSheet ? [] : [{ code: 'material.sealer.sum.readLabel', figures: {} }]),
      ],
      rate: { value: sealer.coversM2PerLitre, unit: 'm2PerLitre' },
      mark: fromSheet ? 'job' : 'P',
      source: fromSheet ? 'job' : 'practice',
      amount: litres,
      unit: 'litre',
      buy: bottles,
      buyUnit: 'bottle',
    },
  ];
}
