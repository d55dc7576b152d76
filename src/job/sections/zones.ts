import * as z from 'zod';
import type { WallSpec, ZoneWish } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { fromKeys, withFrom } from '../shape/withFrom.ts';
import { size } from '../values/length.ts';
import { zoneCount } from '../values/zoneCount.ts';
import { type Notes, orDefault, trouble } from './Notes.ts';
import { wallName } from './names.ts';

interface Splits {
  readonly splits: Readonly<Record<string, unknown>>;
}

/** Parts of the floor that are set in one go. */
export const zonesSchema = z
  .union([
    leaf(zoneCount, 'How many zones, or auto.'),
    withFrom(
      {},
      listOf(size, 'Distances from this wall.'),
      'Where to part the floor: `from A-B: [40 in]`.',
    ).transform((splits): Splits => ({ splits })),
  ])
  .meta({ description: 'Zones, each set in one go: a number, auto, or {from A-B: [40 in]}.' });

/** The wish for zones; `auto` unless told. */
export function buildZones(
  given: z.output<typeof zonesSchema> | undefined,
  walls: readonly WallSpec[],
  path: Path,
  notes: Notes,
): ZoneWish {
  if (!given || !('splits' in given)) return orDefault(notes, given, path, 'auto', zoneCount);
  const all = fromKeys<readonly number[]>(given.splits);
  const first = all[0];
  if (!first || all.length > 1) trouble(notes, 'oneWall', path, { count: all.length }, true);
  if (!first) return { kind: 'auto' };
  const from = wallName(first.name, walls, [...path, first.key], notes, true);
  return { kind: 'splits', from, at: [...new Set(first.value)].sort((a, b) => a - b) };
}
