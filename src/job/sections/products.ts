import * as z from 'zod';
import type { Ticks } from '../../measure/index.ts';
import type { Products, TileSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { volume } from '../values/quantities.ts';
import { text } from '../values/text.ts';
import { buildGrout, groutSchema } from './grout.ts';
import { buildMortar, mortarSchema } from './mortar.ts';
import { type Notes, orDefault } from './Notes.ts';
import { buildSealer, sealerSchema } from './sealer.ts';

/** Products with the figures of their own sheets. */
export const productsSchema = z
  .strictObject({
    mortar: mortarSchema.optional(),
    grout: groutSchema.optional(),
    sealer: sealerSchema.optional(),
    sealant: z
      .strictObject({
        name: leaf(text, 'What it is called.').optional(),
        tube: leaf(volume, 'Content of a tube.').optional(),
      })
      .meta({ description: 'Sealant of the soft joints.' })
      .optional(),
  })
  .meta({ description: "Mortar, grout, sealer and sealant; a product's own sheet wins over every default." });

/** Products with their defaults. */
export function buildProducts(
  given: z.output<typeof productsSchema> | undefined,
  tiles: readonly TileSpec[],
  joint: Ticks,
  notes: Notes,
): Products {
  const grout = buildGrout(given?.grout, notes);
  const name = given?.sealant?.name;
  return {
    mortar: buildMortar(given?.mortar, tiles, joint, notes),
    grout,
    sealer: buildSealer(given?.sealer, grout, tiles, notes),
    sealant: {
      ...(name === undefined ? {} : { name }),
      tubeLitres: orDefault(
        notes,
        given?.sealant?.tube,
        ['products', 'sealant', 'tube'],
        { inches: '10 fl oz', mm: '300 ml' },
        volume,
      ),
    },
  };
}
