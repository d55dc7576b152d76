import * as z from 'zod';
import type { Job } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { length } from '../values/length.ts';
import { share } from '../values/numbers.ts';
import { type Notes, orDefault } from './Notes.ts';

/** The saw. */
export const sawSchema = z
  .strictObject({ kerf: leaf(length, 'Width that the blade takes.').optional() })
  .meta({ description: 'The saw.' });

/** What breaks and what is kept. */
export const wasteSchema = z
  .strictObject({
    breakage: leaf(share, 'Part of the cut pieces that break at the saw.').optional(),
    keep: leaf(share, 'Part of all tiles that the owner keeps, at least one.').optional(),
  })
  .meta({ description: 'What breaks at the saw and what the owner keeps.' });

interface Given {
  readonly saw?: z.output<typeof sawSchema> | undefined;
  readonly waste?: z.output<typeof wasteSchema> | undefined;
}

/** Saw and waste with their defaults. */
export function buildSawAndWaste({ saw, waste }: Given, notes: Notes): Pick<Job, 'saw' | 'waste'> {
  return {
    saw: { kerf: orDefault(notes, saw?.kerf, ['saw', 'kerf'], '2 mm', length, 'M') },
    waste: {
      breakage: orDefault(notes, waste?.breakage, ['waste', 'breakage'], '3 %', share),
      keep: orDefault(notes, waste?.keep, ['waste', 'keep'], '2 %', share),
    },
  };
}
