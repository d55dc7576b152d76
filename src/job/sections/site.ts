import * as z from 'zod';
import type { Site } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { text } from '../values/text.ts';

/** What the crew finds on site. */
export const siteSchema = z
  .strictObject({
    'way in': leaf(text, 'How one gets in, where one parks, what must be carried how far.').optional(),
    water: leaf(text, 'Where water comes from.').optional(),
    power: leaf(text, 'Where power comes from, and whether it is GFCI protected.').optional(),
    'saw stands': leaf(text, 'Where the saw stands, and where its water goes.').optional(),
    'waste goes': leaf(text, 'Where rubble and empty bags go.').optional(),
    photographs: leaf(text, 'Which photographs were taken, and where they are.').optional(),
  })
  .meta({ description: 'Access, water, power, the place of the saw: as found on the first visit.' });

/** The site as found; what nobody wrote stays away. */
export function buildSiteFacts(given: z.output<typeof siteSchema> | undefined): Site {
  const all = {
    wayIn: given?.['way in'],
    water: given?.water,
    power: given?.power,
    sawStands: given?.['saw stands'],
    wasteGoes: given?.['waste goes'],
    photographs: given?.photographs,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}
