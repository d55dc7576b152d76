import * as z from 'zod';
import type { Ticks } from '../../measure/index.ts';
import type { FallsSpec, ObstacleSpec, WallSpec } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { oneOf } from '../values/oneOf.ts';
import { text } from '../values/text.ts';
import { type Notes, noteDefault, orDefault } from './Notes.ts';
import { edgeName, wallName } from './names.ts';

const folds = oneOf(['drawn', 'cut']);

/** How a floor falls to a drain. */
export const fallsSchema = z
  .strictObject({
    to: leaf(text, 'Name of the drain among the obstacles.'),
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
  const drain = obstacles.find(({ meets }) => meets === 'drain')?.name;
  if (!given && drain === undefined) return undefined;
  if (!given) noteDefault(notes, [...path, 'to'], drain!);
  const names = obstacles.map(({ name }) => name);
  return {
    to: given ? edgeName(given.to, names, [...path, 'to'], notes) : drain!,
    from:
      given?.from?.map((name, i) => wallName(name, walls, [...path, 'from', i], notes)) ??
      walls.map(({ id }) => id),
    folds: orDefault(notes, given?.folds, [...path, 'folds'], 'drawn', folds),
    joint,
  };
}
