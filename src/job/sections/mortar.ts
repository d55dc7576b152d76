import * as z from 'zod';
import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import type { MortarSpec, TileSpec } from '../Job.ts';
import { longestSide } from '../longestSide.ts';
import { leaf } from '../shape/leaf.ts';
import { notch } from '../values/notch.ts';
import { areaRange, mass, time } from '../values/quantities.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { type Notes, orDefault } from './Notes.ts';
import { statedFields } from './statedFields.ts';

/** The mortar, with the figures of its own sheet. */
export const mortarSchema = z
  .strictObject({
    name: leaf(text, 'What it is called.').optional(),
    notch: leaf(notch, 'Trowel: width x depth x space of its notches, or V 3/16 in.').optional(),
    bag: leaf(mass, 'Mass of a bag.').optional(),
    covers: leaf(areaRange, 'What a bag covers with this notch, from its own sheet.').optional(),
    'back butter': leaf(yesNo, 'Whether the backs of the tiles are buttered too.').optional(),
    'pot life': leaf(time, 'How long a batch stays workable.').optional(),
    'grout after': leaf(time, 'How long the tile must stand before it is grouted.').optional(),
  })
  .meta({ description: 'The mortar, with the figures of its own sheet.' });

/** Usual trowel by the longest side of the tile, of mosaic that of a chip: common practice, no source. */
const TROWELS: readonly { readonly under: Ticks; readonly inches: string; readonly mm: string }[] = [
  { under: 4 * TICKS_PER_INCH, inches: 'V 3/16 in', mm: 'V 5 mm' },
  { under: 8 * TICKS_PER_INCH, inches: '1/4 in x 1/4 in x 1/4 in', mm: '6 x 6 x 6 mm' },
  { under: 16 * TICKS_PER_INCH, inches: '1/4 in x 3/8 in x 1/4 in', mm: '6 x 10 x 6 mm' },
  { under: Number.POSITIVE_INFINITY, inches: '1/2 in x 1/2 in x 1/2 in', mm: '12 x 12 x 12 mm' },
];

/**
 * The notch that is usual for a tile whose longest side is given.
 *
 * @example
 * usualNotch(96012).inches //=> '1/4 in x 3/8 in x 1/4 in'
 */
export function usualNotch(longest: Ticks): { readonly inches: string; readonly mm: string } {
  const { inches, mm } = TROWELS.find(({ under }) => longest < under) ?? TROWELS.at(-1)!;
  return { inches, mm };
}

const FIELDS = {
  notch: 'notch',
  bag: 'bagKg',
  covers: 'coversM2',
  'back butter': 'backButter',
  'pot life': 'potLifeHours',
  'grout after': 'groutAfterHours',
} as const;

/** The mortar with its defaults. */
export function buildMortar(
  given: z.output<typeof mortarSchema> | undefined,
  tiles: readonly TileSpec[],
  joint: Ticks,
  notes: Notes,
): MortarSpec {
  const at = (key: string) => ['products', 'mortar', key];
  return {
    ...(given?.name === undefined ? {} : { name: given.name }),
    notch: orDefault(notes, given?.notch, at('notch'), usualNotch(longestSide(tiles, joint)), notch),
    bagKg: orDefault(notes, given?.bag, at('bag'), { inches: '50 lb', mm: '20 kg' }, mass),
    ...(given?.covers ? { coversM2: given.covers } : {}),
    backButter: orDefault(notes, given?.['back butter'], at('back butter'), 'no', yesNo),
    potLifeHours: orDefault(notes, given?.['pot life'], at('pot life'), '1.5 h', time),
    groutAfterHours: orDefault(notes, given?.['grout after'], at('grout after'), '24 h', time, 'H'),
    stated: statedFields(given, FIELDS),
  };
}
