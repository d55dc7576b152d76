import { FLANGE } from '../trade/index.ts';
import type { HeightResult } from './Heights.ts';
import type { Material } from './Material.ts';

/** Spacer rings for each flange that ends too low, as its height asks for them. */
export function ringLines(results: readonly HeightResult[]): readonly Material[] {
  return results
    .filter(({ code }) => code === 'height.flange.spacers')
    .map(({ name, figures }) => {
      const { thick, thin, thickCount, thinCount, spacers } = figures as Readonly<Record<string, number>>;
      const count = thickCount! + thinCount!;
      return {
        what: 'ring',
        name,
        sum: [
          {
            code: 'material.ring.sum.rings',
            figures: {
              spacers: spacers!,
              thick: thick!,
              thin: thin!,
              thickCount: thickCount!,
              thinCount: thinCount!,
            },
          },
        ],
        rate: { value: 1, unit: 'ring' },
        mark: FLANGE.mark,
        source: FLANGE.source,
        amount: count,
        unit: 'ring',
        buy: count,
        buyUnit: 'ring',
      };
    });
}
