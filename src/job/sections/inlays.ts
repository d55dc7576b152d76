import * as z from 'zod';
import type { BorderCourse, InlaySpec, TileSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { withFrom } from '../shape/withFrom.ts';
import { length } from '../values/length.ts';
import { pair } from '../values/pair.ts';
import { borderSchema, buildBorder } from './border.ts';
import type { Around } from './buildAlong.ts';
import { type Notes, trouble } from './Notes.ts';
import { fromWalls } from './obstacles.ts';
import { buildPattern, patternSchema } from './pattern.ts';

const inlaySchema = withFrom(
  {
    rectangle: leaf(pair, 'Size along the first wall named x size square to it, tile to tile.'),
    pattern: patternSchema.optional(),
    border: borderSchema.optional(),
  },
  leaf(length, 'Distance from this wall, square to it, of the near corner.'),
  'A rectangle in the field with its own tile and pattern, placed from two walls: `from A-B: 15 in`.',
);

/** Inlays of a surface by name. */
export const inlaysSchema = z
  .record(z.string(), inlaySchema)
  .meta({ description: 'Rectangles in the field with a tile and pattern of their own, such as rug.' });

/** The inlays of a surface; undefined where there are none. */
export function buildInlays(
  given: z.output<typeof inlaysSchema> | undefined,
  tiles: readonly TileSpec[],
  around: Around,
  at: Path,
  notes: Notes,
): readonly InlaySpec[] | undefined {
  const inlays = Object.entries(given ?? {}).map(([name, inlay]): InlaySpec => {
    const path = [...at, name];
    const from = fromWalls(inlay, around.walls, path, notes);
    const pattern = buildPattern(inlay.pattern, tiles, around, [...path, 'pattern'], notes);
    const courses = buildBorder(inlay.border, { tiles, walls: around.walls }, [...path, 'border'], notes);
    const border = courses?.map((course, i) => closed(course, [...path, 'border', i], notes));
    return {
      name,
      along: inlay.rectangle[0],
      out: inlay.rectangle[1],
      from,
      pattern: inlay.pattern?.along === undefined ? { ...pattern, along: from[0].wall } : pattern,
      ...(border && { border }),
    };
  });
  return inlays.length > 0 ? inlays : undefined;
}

/** Round an inlay every width is told: its own size says where its field ends. */
function closed(course: BorderCourse, path: Path, notes: Notes): BorderCourse & { width: number } {
  const { width } = course;
  if (typeof width === 'number') return { ...course, width };
  trouble(notes, 'inlaySolve', [...path, 'width']);
  return { ...course, width: Number.NaN };
}
