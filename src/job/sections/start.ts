import * as z from 'zod';
import { printLength, type Ticks } from '../../measure/index.ts';
import { EASED_JOINT, type StartTolerance } from '../../trade/index.ts';
import type { StartWish, SurfaceSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { length } from '../values/length.ts';
import { startWish } from '../values/startWish.ts';
import { type Notes, orDefault, trouble } from './Notes.ts';
import { edgeName } from './names.ts';

/** Where the pattern starts. */
export const startSchema = z
  .strictObject({
    along: leaf(startWish, "Start along the tile's length.").optional(),
    across: leaf(startWish, "Start across the tile's length.").optional(),
    'ease joint': leaf(
      length,
      'By how much the joint may be narrower or wider to be rid of strips in sight, 1/32 in at most; 0 in unless told.',
    ).optional(),
    tolerance: z
      .strictObject({
        strips: leaf(length, 'Wall with strips that may be more for the sake of wider cuts.').optional(),
        halves: leaf(
          length,
          'Wall times what its cuts lack of half a tile, that may be more for a wider narrowest cut.',
        ).optional(),
        narrowest: leaf(
          length,
          'Width by which the narrowest cut may be less for the sake of corners, openings and whole tiles.',
        ).optional(),
        tiles: leaf(
          length,
          'Width by which the smallest piece may be less where that takes fewer tiles.',
        ).optional(),
        balance: leaf(length, 'By how much the start may then be further off balance.').optional(),
        lines: leaf(length, 'By how much chalk lines may be off and the figures still hold.').optional(),
      })
      .meta({ description: 'What the search for a start may give up in one figure for the next.' })
      .optional(),
  })
  .meta({ description: 'Where the pattern starts on each of its two axes; best unless told.' });

function named(wish: StartWish, names: readonly string[], path: Path, notes: Notes): StartWish {
  const name = (given: string) => edgeName(given, names, path, notes);
  if (wish.kind === 'centred') return { ...wish, between: [name(wish.between[0]), name(wish.between[1])] };
  if (wish.kind === 'cut') return { ...wish, at: name(wish.at) };
  return wish.kind === 'best' ? wish : { ...wish, on: name(wish.on) };
}

/** Both starts, with the names of their edges as the surface has them. */
export function buildStart(
  given: z.output<typeof startSchema> | undefined,
  names: readonly string[],
  path: Path,
  notes: Notes,
): SurfaceSpec['start'] {
  const axis = (key: 'along' | 'across') => {
    const at = [...path, key];
    return named(orDefault(notes, given?.[key], at, 'best', startWish), names, at, notes);
  };
  return {
    along: axis('along'),
    across: axis('across'),
    easeJoint: eased(given?.['ease joint'], [...path, 'ease joint'], notes),
    tolerance: tolerance(given?.tolerance, [...path, 'tolerance'], notes),
  };
}

/** Easing is not noted as a default where nobody asks for it: a joint is laid as it is written. */
function eased(given: Ticks | undefined, path: Path, notes: Notes): Ticks {
  if (given === undefined || given <= EASED_JOINT.value.most) return given ?? 0;
  trouble(notes, 'easedTooMuch', path, { most: printLength(EASED_JOINT.value.most, notes.system) });
  return 0;
}

type Given = NonNullable<z.output<typeof startSchema>['tolerance']>;

/** What the search may give up, as START_TOLERANCE has it, written as it would be in a job. */
const USUAL = {
  strips: { inches: '1 in', mm: '25 mm' },
  halves: { inches: '3 in', mm: '75 mm' },
  narrowest: { inches: '3 in', mm: '75 mm' },
  tiles: { inches: '1/8 in', mm: '3 mm' },
  balance: { inches: '0 in', mm: '0 mm' },
  lines: { inches: '1/16 in', mm: '1.5 mm' },
} as const;

function tolerance(given: Given | undefined, path: Path, notes: Notes): StartTolerance {
  const one = (key: keyof StartTolerance) =>
    orDefault(notes, given?.[key], [...path, key], USUAL[key], length);
  return {
    strips: one('strips'),
    halves: one('halves'),
    narrowest: one('narrowest'),
    tiles: one('tiles'),
    balance: one('balance'),
    lines: one('lines'),
  };
}
