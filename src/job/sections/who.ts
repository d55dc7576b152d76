import * as z from 'zod';
import type { Job } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { date } from '../values/calendarValues.ts';
import { year } from '../values/numbers.ts';
import { oneOf } from '../values/oneOf.ts';
import { picture } from '../values/picture.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import { type Notes, noteDefault, orDefault } from './Notes.ts';

const status = oneOf(['planned', 'underway', 'finished']);

/** Keys that say whose job it is and what it is called. */
export const whoShape = {
  title: leaf(text, 'What the job is called on every sheet.'),
  owner: leaf(text, 'Whose floor it is.').optional(),
  place: leaf(text, 'Where the job is.').optional(),
  'house year': leaf(
    year,
    'Year the house was built, or unknown. Old floors and old paint stop the job until they are tested.',
  ).optional(),
  status: leaf(
    status,
    'planned, underway or finished. A finished job keeps the packet it was built with.',
  ).optional(),
  revision: z
    .strictObject({
      letter: leaf(text, 'A for the first issue, then B, C …').optional(),
      date: leaf(date, 'Date of this revision; it stands on every sheet.'),
    })
    .meta({ description: 'Which issue of the packet this is.' }),
  picture: leaf(picture, "Path of a picture inside the job's folder.").optional(),
  contacts: z
    .strictObject({
      setter: leaf(text, 'Who sets the tile.').optional(),
      phone: leaf(text, 'Number to call.').optional(),
    })
    .meta({ description: 'Whom to call.' })
    .optional(),
  access: z
    .strictObject({
      'only toilet': leaf(
        yesNo,
        'Whether the only toilet of the house is in the way of the work.',
      ).optional(),
      'only exit': leaf(
        yesNo,
        'Whether the only way out of the house leads over the floor, in at one door and out at another.',
      ).optional(),
    })
    .meta({ description: 'What the house cannot do without.' })
    .optional(),
};

type Given = z.output<z.ZodObject<typeof whoShape>>;
type Who = Pick<
  Job,
  'title' | 'owner' | 'place' | 'status' | 'revision' | 'houseYear' | 'contacts' | 'access' | 'picture'
>;

/** Who and what of a job. */
export function buildWho(given: Given, notes: Notes): Who {
  if (given['house year'] === undefined && !Object.hasOwn(given, 'house year'))
    noteDefault(notes, ['house year'], 'unknown');
  return {
    title: given.title,
    owner: given.owner ?? '',
    place: given.place ?? '',
    status: orDefault(notes, given.status, ['status'], 'planned', status),
    revision: {
      letter: orDefault(notes, given.revision.letter, ['revision', 'letter'], 'A', text),
      date: given.revision.date,
    },
    ...(given['house year'] === undefined ? {} : { houseYear: given['house year'] }),
    contacts: given.contacts ?? {},
    access: {
      onlyToilet: orDefault(notes, given.access?.['only toilet'], ['access', 'only toilet'], 'no', yesNo),
      onlyExit: orDefault(notes, given.access?.['only exit'], ['access', 'only exit'], 'no', yesNo),
    },
    ...(given.picture === undefined ? {} : { picture: given.picture }),
  };
}
