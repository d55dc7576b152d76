import * as z from 'zod';
import type { Ticks } from '../../measure/index.ts';
import type { FallsSpec, ObstacleSpec, WallSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { oneOf } from '../values/oneOf.ts';
import { text } from '../values/text.ts';
import { type Notes, noteDefault, orDefault, trouble } from './Notes.ts';
import { edgeName, wallName } from './names.ts';

const folds = oneOf(['drawn', 'cut']);

/** How a floor falls to a drain. */
export const fallsSchema = z
  .strictObject({
    to: leaf(text, 'Name of the drain among the obstacles; the only one where there is one.').optional(),
    from: listOf(
      text,
      'The walls that the floor falls from, one plane each; all of them unless told.',
    ).optional(),
    folds: leaf(
      folds,
      'Whether tile is `cut` along the folds between the planes, or they are only `drawn`; drawn unless told.',
    ).optional(),
  })
  .meta({ description: 'How the floor falls to a drain.' });

/** What falls are read from. */
export interface FallsGround {
  readonly walls: readonly WallSpec[];
  readonly obstacles: readonly ObstacleSpec[];
  readonly joint: Ticks;
}

/** The falls of a floor: as told, or from all walls to the one drain that it has; undefined where it has none. */
export function buildFalls(
  given: z.output<typeof fallsSchema> | undefined,
  { walls, obstacles, joint }: FallsGround,
  path: Path,
  notes: Notes,
): FallsSpec | undefined {
  const drains = obstacles.filter(({ meets }) => meets === 'drain').map(({ name }) => name);
  if (!given && drains.length === 0) return undefined;
  const names = obstacles.map(({ name }) => name);
  return {
    to:
      given?.to === undefined
        ? onlyDrain(drains, given !== undefined, path, notes)
        : edgeName(given.to, names, [...path, 'to'], notes),
    from:
      given?.from?.map((name, i) => wallName(name, walls, [...path, 'from', i], notes)) ??
      walls.map(({ id }) => id),
    folds: orDefault(notes, given?.folds, [...path, 'folds'], 'drawn', folds),
    joint,
  };
}

/** The one drain of a floor, as nobody has to name it; none and several are a problem: `told` where the file has the key `falls`. */
function onlyDrain(drains: readonly string[], told: boolean, path: Path, notes: Notes): string {
  const [first, second] = drains;
  const at = [...path, 'to'];
  if (first === undefined) trouble(notes, 'missing', at, { key: 'to' }, true);
  else if (second === undefined) noteDefault(notes, at, first);
  else {
    const where = told ? path : [...path.slice(0, -1), 'obstacles', second];
    trouble(notes, 'whichDrain', where, { names: drains.join(', '), first }, true);
  }
  return first ?? '';
}
