import * as z from 'zod';
import { BREAKAGE, LEAST_OFFCUT, type SawnAs } from '../../trade/index.ts';
import type { Job } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import { good, type Reader } from '../shape/Reader.ts';
import { length } from '../values/length.ts';
import { share } from '../values/numbers.ts';
import { oneOf } from '../values/oneOf.ts';
import { type Notes, noteDefault, orDefault } from './Notes.ts';

/** The saw. */
export const sawSchema = z
  .strictObject({ kerf: leaf(length, 'Width that the blade takes.').optional() })
  .meta({ description: 'The saw.' });

const planWord = oneOf(['fewest tiles', 'smallest pile'] as const);

/** What a plan keeps small, in the words of the file. */
const planFor: Reader<Job['offcuts']['plan']> = {
  ...planWord,
  read: (value) => {
    const reading = planWord.read(value);
    if (!reading.ok) return reading;
    return good(reading.value === 'fewest tiles' ? 'fewestTiles' : 'smallestPile');
  },
  standIn: 'fewestTiles',
};

/** How offcuts are used again. */
export const offcutsSchema = z
  .strictObject({
    plan: leaf(planFor, 'What the plan keeps small: fewest tiles, or smallest pile of offcuts.').optional(),
    narrowest: leaf(length, 'A narrower offcut is not kept for another piece.').optional(),
  })
  .meta({ description: 'How offcuts are used again.' });

const sawnAs = {
  straight: leaf(share, 'Of rips, corners and tapers.').optional(),
  point: leaf(share, 'Of pieces with a point, as at a slanting wall.').optional(),
  notch: leaf(share, 'Of notches.').optional(),
  u: leaf(share, 'Of cuts round three sides of something.').optional(),
  hole: leaf(share, 'Of holes.').optional(),
  curve: leaf(share, 'Of curved cuts.').optional(),
  odd: leaf(share, 'Of any other shape.').optional(),
};

type GivenBreakage = Readonly<Partial<Record<SawnAs | 'all', number | undefined>>>;

const breakageSchema = z
  .union([
    leaf(share, 'Part of all cut pieces that break at the saw.').transform((all): GivenBreakage => ({ all })),
    z.strictObject(sawnAs).meta({ description: 'By how they are sawn.' }),
  ])
  .meta({ description: 'Part of the cut pieces that break at the saw: of all, or by how they are sawn.' });

/** What breaks and what is kept. */
export const wasteSchema = z
  .strictObject({
    breakage: breakageSchema.optional(),
    keep: leaf(share, 'Part of all tiles that the owner keeps, at least one.').optional(),
  })
  .meta({ description: 'What breaks at the saw and what the owner keeps.' });

interface Given {
  readonly saw?: z.output<typeof sawSchema> | undefined;
  readonly offcuts?: z.output<typeof offcutsSchema> | undefined;
  readonly waste?: z.output<typeof wasteSchema> | undefined;
}

/** Saw, offcuts and waste with their defaults. */
export function buildSawAndWaste(
  { saw, offcuts, waste }: Given,
  notes: Notes,
): Pick<Job, 'saw' | 'offcuts' | 'waste'> {
  const { inches, mm } = LEAST_OFFCUT.value;
  const narrowest = { inches: `${inches} in`, mm: `${mm} mm` };
  return {
    saw: { kerf: orDefault(notes, saw?.kerf, ['saw', 'kerf'], '2 mm', length, 'M') },
    offcuts: {
      plan: orDefault(notes, offcuts?.plan, ['offcuts', 'plan'], 'fewest tiles', planFor),
      narrowest: orDefault(notes, offcuts?.narrowest, ['offcuts', 'narrowest'], narrowest, length),
    },
    waste: {
      breakage: buildBreakage(waste?.breakage, notes),
      keep: orDefault(notes, waste?.keep, ['waste', 'keep'], '2 %', share),
    },
  };
}

/** Where nothing is given the usual shares are noted as one map. */
function buildBreakage(given: GivenBreakage | undefined, notes: Notes): Job['waste']['breakage'] {
  const { value: usual, mark } = BREAKAGE;
  const text = (way: SawnAs) => `${Math.round(100 * usual[way])} %`;
  if (!given) {
    const all = (Object.keys(usual) as SawnAs[]).map((way) => `${way}: ${text(way)}`);
    noteDefault(notes, ['waste', 'breakage'], `{${all.join(', ')}}`, mark);
    return usual;
  }
  const of = (way: SawnAs) =>
    orDefault(notes, given.all ?? given[way], ['waste', 'breakage', way], text(way), share, mark);
  return {
    straight: of('straight'),
    point: of('point'),
    notch: of('notch'),
    u: of('u'),
    hole: of('hole'),
    curve: of('curve'),
    odd: of('odd'),
  };
}
