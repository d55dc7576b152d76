import * as z from 'zod';
import type { OwnRepeat, TileSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { modules } from '../values/numbers.ts';
import { text } from '../values/text.ts';
import { yesNo } from '../values/yesNo.ts';
import type { Notes } from './Notes.ts';
import { tileKey } from './tileKey.ts';

const vector = (description: string) =>
  z.tuple([leaf(modules, 'Modules to the right.'), leaf(modules, 'Modules up.')]).meta({ description });

/** A pattern of the owner's own: where it repeats and where its tiles lie, in modules. */
export const ownPatternSchema = z
  .strictObject({
    repeat: z
      .tuple([vector('To the next repeat.'), vector('To the next one beside these.')])
      .meta({ description: 'Two steps from a repeat to its neighbours, in modules: [[3, 1], [0, 6]].' }),
    tiles: z
      .array(
        z.strictObject({
          tile: leaf(text, 'Name of the tile.'),
          at: vector('Its lower left corner.'),
          stands: leaf(yesNo, 'Its longer side stands upright; it lies unless told.').optional(),
        }),
      )
      .min(1)
      .meta({ description: 'The tiles of one repeat.' }),
  })
  .meta({
    description:
      'A pattern of your own. A module is the smallest side of its tiles with one joint; every side is a whole number of modules less one joint.',
  });

/** The pattern of the owner's own with its tiles' names made sure of. */
export function buildOwnPattern(
  given: z.output<typeof ownPatternSchema>,
  tiles: readonly TileSpec[],
  path: Path,
  notes: Notes,
): OwnRepeat {
  return {
    repeat: given.repeat,
    places: given.tiles.map(({ tile, at, stands = false }, i) => {
      return { tile: tileKey(tile, tiles, [...path, 'tiles', i, 'tile'], notes), at, stands };
    }),
  };
}
