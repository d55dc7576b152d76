import * as z from 'zod';
import type { Print } from '../Job.ts';
import { languages } from '../languages.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import { oneOf } from '../values/oneOf.ts';
import { sawStep } from '../values/sawStep.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';

const paper = oneOf(['letter', 'a4']);
const units = oneOf(['inches', 'mm']);
const language = oneOf(languages);

/** Settings of the paper. */
export const printSchema = z
  .strictObject({
    paper: leaf(paper, 'letter or a4.').optional(),
    units: leaf(units, 'inches or mm; those of the first length in the file unless told.').optional(),
    'saw step': leaf(sawStep, 'Step that saw sizes are rounded to.').optional(),
    crew: listOf(language, 'One or two languages of the crew; the first is that of the sheet.').optional(),
    owner: leaf(language, 'Language of the owner.').optional(),
  })
  .meta({ description: 'Paper, units and languages of the sheets.' });

/** The paper's settings, with their defaults. */
export function buildPrint(given: z.output<typeof printSchema> | undefined, notes: Notes): Print {
  const crew = given?.crew ?? ['en'];
  if (!given?.crew) noteDefault(notes, ['print', 'crew'], 'en');
  if (crew.length > 2) trouble(notes, 'tooManyLanguages', ['print', 'crew'], { count: crew.length });
  if (!given?.units) noteDefault(notes, ['print', 'units'], notes.system);
  return {
    paper: orDefault(notes, given?.paper, ['print', 'paper'], { inches: 'letter', mm: 'a4' }, paper),
    system: notes.system,
    step: orDefault(
      notes,
      given?.['saw step'],
      ['print', 'saw step'],
      { inches: '1/16 in', mm: '1 mm' },
      sawStep,
    ),
    crew,
    owner: orDefault(notes, given?.owner, ['print', 'owner'], 'en', language),
  };
}
