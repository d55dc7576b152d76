import * as z from 'zod';
import type { StartWish, SurfaceSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { startWish } from '../values/startWish.ts';
import { type Notes, orDefault } from './Notes.ts';
import { edgeName } from './names.ts';

/** Where the pattern starts. */
export const startSchema = z
  .strictObject({
    along: leaf(startWish, "Start along the tile's length.").optional(),
    across: leaf(startWish, "Start across the tile's length.").optional(),
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
  return { along: axis('along'), across: axis('across') };
}
