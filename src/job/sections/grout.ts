import * as z from 'zod';
import type { GroutSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { density } from '../values/density.ts';
import { oneOf } from '../values/oneOf.ts';
import { mass, time, timeRange } from '../values/quantities.ts';
import { text } from '../values/text.ts';
import { type Notes, orDefault } from './Notes.ts';
import { statedFields } from './statedFields.ts';

const kind = oneOf(['cement', 'epoxy']);

/** The grout, with the figures of its own sheet. */
export const groutSchema = z
  .strictObject({
    name: leaf(text, 'What it is called.').optional(),
    kind: leaf(kind, 'cement or epoxy.').optional(),
    bag: leaf(mass, 'Mass of a bag.').optional(),
    colour: leaf(text, 'Its colour, by name or number.').optional(),
    batch: leaf(text, 'Batch number, one for all bags.').optional(),
    density: leaf(density, 'Dry powder to a litre of joint: 1.6 kg per litre.').optional(),
    takes: leaf(time, 'How long grouting this floor takes.').optional(),
    walk: leaf(time, 'From grouting to light foot traffic.').optional(),
    heavy: leaf(time, 'From grouting to heavy use.').optional(),
    water: leaf(time, 'From grouting to standing water or a shower.').optional(),
    'seal after': leaf(timeRange, 'From grouting to sealing: 72 h, or 4-6 days.').optional(),
  })
  .meta({ description: 'The grout, with the figures of its own sheet.' });

const FIELDS = {
  bag: 'bagKg',
  density: 'kgPerLitre',
  takes: 'groutingHours',
  walk: 'walkHours',
  heavy: 'heavyHours',
  water: 'waterHours',
  'seal after': 'sealAfterHours',
} as const;

/** The window for sealing is two days wide where the product's sheet gives only its beginning. */
function sealWindow([from, to]: readonly [number, number?]): readonly [number, number] {
  return [from, to ?? from + 48];
}

/** The grout with its defaults. */
export function buildGrout(given: z.output<typeof groutSchema> | undefined, notes: Notes): GroutSpec {
  const at = (key: string) => ['products', 'grout', key];
  const { name, colour, batch } = given ?? {};
  return {
    ...(name === undefined ? {} : { name }),
    kind: orDefault(notes, given?.kind, at('kind'), 'cement', kind),
    bagKg: orDefault(notes, given?.bag, at('bag'), { inches: '10 lb', mm: '5 kg' }, mass),
    ...(colour === undefined ? {} : { colour }),
    ...(batch === undefined ? {} : { batch }),
    kgPerLitre: orDefault(notes, given?.density, at('density'), '1.6 kg per litre', density),
    walkHours: orDefault(notes, given?.walk, at('walk'), '24 h', time),
    heavyHours: orDefault(notes, given?.heavy, at('heavy'), '72 h', time),
    waterHours: orDefault(notes, given?.water, at('water'), '7 days', time),
    sealAfterHours: sealWindow(
      orDefault(notes, given?.['seal after'], at('seal after'), '4-6 days', timeRange),
    ),
    groutingHours: orDefault(notes, given?.takes, at('takes'), '3 h', time),
    stated: [
      ...statedFields(given, FIELDS),
      ...(given?.['seal after']?.[1] === undefined ? [] : ['sealToHours']),
    ],
  };
}
