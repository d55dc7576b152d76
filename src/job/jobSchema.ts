import * as z from 'zod';
import { baseSchema } from './sections/base.ts';
import { printSchema } from './sections/print.ts';
import { productsSchema } from './sections/products.ts';
import { offcutsSchema, sawSchema, wasteSchema } from './sections/sawAndWaste.ts';
import { siteSchema } from './sections/site.ts';
import { surfaceSchema } from './sections/surface.ts';
import { tilesSchema } from './sections/tile.ts';
import { whoShape } from './sections/who.ts';
import { workSchema } from './sections/work.ts';
import { leaf } from './shape/leaf.ts';
import { jointWidth } from './values/length.ts';

/** The whole job file: its keys, and what stands behind each. */
export const jobSchema = z
  .strictObject({
    ...whoShape,
    site: siteSchema.optional(),
    print: printSchema.optional(),
    work: workSchema.optional(),
    tile: tilesSchema,
    joint: leaf(
      jointWidth,
      'Width of the joint. There is no default: measure it with the spacer you will use.',
    ),
    floor: surfaceSchema.optional(),
    floors: z
      .record(z.string(), surfaceSchema)
      .meta({ description: 'Several floors of one job, each under a name of your own, instead of floor.' })
      .optional(),
    base: baseSchema.optional(),
    products: productsSchema.optional(),
    saw: sawSchema.optional(),
    offcuts: offcutsSchema.optional(),
    waste: wasteSchema.optional(),
  })
  .meta({ title: 'Tile job', description: 'One tile job, as measured and as wished for.' });

/** The job file as read, before defaults are filled in. */
export type GivenJob = z.output<typeof jobSchema>;
