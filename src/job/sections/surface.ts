import * as z from 'zod';
import type { Ticks } from '../../measure/index.ts';
import { TAPER_SHOWS } from '../../trade/index.ts';
import type { SurfaceSpec, TileSpec, WallSpec } from '../Job.ts';
import { leaf } from '../shape/leaf.ts';
import type { Path } from '../shape/Trouble.ts';
import { length } from '../values/length.ts';
import { share, some } from '../values/numbers.ts';
import { oneOf } from '../values/oneOf.ts';
import { borderSchema, buildBorder } from './border.ts';
import { buildDoorways, doorwaysSchema } from './doorways.ts';
import type { Gaps } from './edge.ts';
import { buildFalls, fallsSchema } from './falls.ts';
import { buildInlays, inlaysSchema } from './inlays.ts';
import {
  baseLineSchema,
  buildBaseLine,
  buildCornerChecks,
  buildPrecision,
  buildSetAside,
  cornerChecksSchema,
  precisionSchema,
  setAsideSchema,
} from './measured.ts';
import { type Notes, orDefault } from './Notes.ts';
import { checkNames } from './names.ts';
import { buildObstacles, obstaclesSchema } from './obstacles.ts';
import { buildPattern, patternSchema } from './pattern.ts';
import { buildStart, startSchema } from './start.ts';
import {
  anglesSchema,
  buildCorners,
  buildDiagonals,
  buildWalls,
  diagonalsSchema,
  wallsSchema,
} from './walls.ts';
import { buildZones, zonesSchema } from './zones.ts';

const exposure = oneOf(['dry', 'wet', 'sun', 'outside']);

/** A floor as measured, and how it is to be tiled. */
export const surfaceSchema = z
  .strictObject({
    walls: wallsSchema,
    diagonals: diagonalsSchema.optional(),
    angles: anglesSchema.optional(),
    precision: precisionSchema.optional(),
    'corner checks': cornerChecksSchema.optional(),
    'base line': baseLineSchema.optional(),
    'set aside': setAsideSchema.optional(),
    gap: leaf(length, 'Gap at walls and obstacles that have none of their own.').optional(),
    'gap max': leaf(length, 'Largest gap that base board or casing covers.').optional(),
    doorways: doorwaysSchema.optional(),
    obstacles: obstaclesSchema.optional(),
    exposure: leaf(exposure, 'dry, wet, sun (or heat) or outside.').optional(),
    falls: fallsSchema.optional(),
    pattern: patternSchema.optional(),
    border: borderSchema.optional(),
    inlays: inlaysSchema.optional(),
    start: startSchema.optional(),
    zones: zonesSchema.optional(),
    'min web': leaf(length, "Least tile between an opening and the tile's edge.").optional(),
    'min strip': leaf(length, 'A strip in sight thinner than this is flagged.').optional(),
    'min cut': leaf(share, 'Part of a tile under which a cut is flagged, such as 1/2.').optional(),
    'taper shows': leaf(
      share,
      'Part of its narrowest cut from which a wall out of line is told to show, such as 10 %.',
    ).optional(),
    'focal weight': leaf(
      some,
      'How many times the taper at a focal wall counts against that at a plain one.',
    ).optional(),
  })
  .meta({ description: 'The floor as measured, and how it is to be tiled.' });

type Given = z.output<typeof surfaceSchema>;

function buildGaps(given: Given, path: Path, notes: Notes): Gaps {
  const inches = notes.system === 'inches';
  return {
    gap: orDefault(notes, given.gap, [...path, 'gap'], { inches: '1/4 in', mm: '6 mm' }, length),
    covered: orDefault(
      notes,
      given['gap max'],
      [...path, 'gap max'],
      { inches: '1/2 in', mm: '12 mm' },
      length,
    ),
    // 1/16 in, or 1.5 mm, in ticks.
    spare: inches ? 508 : 480,
  };
}

function buildLeast(given: Given, path: Path, notes: Notes) {
  return {
    minWeb: orDefault(
      notes,
      given['min web'],
      [...path, 'min web'],
      { inches: '1/2 in', mm: '12 mm' },
      length,
    ),
    minStrip: orDefault(
      notes,
      given['min strip'],
      [...path, 'min strip'],
      { inches: '1 in', mm: '25 mm' },
      length,
      'M',
    ),
    minShare: orDefault(notes, given['min cut'], [...path, 'min cut'], '1/2', share, 'S'),
    taperShows: orDefault(notes, given['taper shows'], [...path, 'taper shows'], '10 %', share),
    focalWeight: orDefault(notes, given['focal weight'], [...path, 'focal weight'], '2', some),
  };
}

/** Everything that was read of a surface beside its walls. */
function buildReadings(given: Given, walls: readonly WallSpec[], path: Path, notes: Notes) {
  const corners = buildCorners(walls, given.angles, [...path, 'angles'], notes);
  const read = {
    walls,
    diagonals: buildDiagonals(given.diagonals, corners, [...path, 'diagonals'], notes),
    cornerChecks: buildCornerChecks(given['corner checks'], corners, [...path, 'corner checks'], notes),
    baseLine: buildBaseLine(given['base line'], corners, [...path, 'base line'], notes),
  };
  return {
    corners,
    ...read,
    precision: buildPrecision(given.precision, [...path, 'precision'], notes),
    setAside: buildSetAside(given['set aside'], read, [...path, 'set aside'], notes),
  };
}

/** One surface with everything in it that the file names checked against what the surface has. */
export function buildSurface(
  name: string,
  given: Given,
  { tiles, joint }: { readonly tiles: readonly TileSpec[]; readonly joint: Ticks },
  path: Path,
  notes: Notes,
): SurfaceSpec {
  const gaps = buildGaps(given, path, notes);
  const walls = buildWalls(given.walls, gaps, [...path, 'walls'], notes);
  const readings = buildReadings(given, walls, path, notes);
  const doorways = buildDoorways(given.doorways, walls, gaps, [...path, 'doorways'], notes);
  const obstacles = buildObstacles(given.obstacles, walls, gaps, [...path, 'obstacles'], notes);
  const wallNames = walls.map(({ id }) => id);
  const doorNames = doorways.map((doorway) => doorway.name);
  const names = [...wallNames, ...doorNames, ...obstacles.map((obstacle) => obstacle.name)];
  checkNames('doorways', doorways, wallNames, path, notes);
  checkNames('obstacles', obstacles, [...wallNames, ...doorNames], path, notes);
  const border = buildBorder(given.border, { tiles, walls }, [...path, 'border'], notes);
  const around = { walls, names, focalWeight: given['focal weight'] ?? TAPER_SHOWS.value.focalWeight };
  const falls = buildFalls(given.falls, { walls, obstacles, joint }, [...path, 'falls'], notes);
  const inlays = buildInlays(given.inlays, tiles, around, [...path, 'inlays'], notes);
  checkNames('inlays', inlays ?? [], names, path, notes);
  return {
    name,
    kind: 'floor',
    ...readings,
    doorways,
    obstacles,
    exposure: orDefault(notes, given.exposure, [...path, 'exposure'], 'dry', exposure),
    ...(falls && { falls }),
    pattern: buildPattern(given.pattern, tiles, around, [...path, 'pattern'], notes),
    ...(border && { border }),
    ...(inlays && { inlays }),
    start: buildStart(given.start, names, [...path, 'start'], notes),
    zones: buildZones(given.zones, walls, [...path, 'zones'], notes),
    ...buildLeast(given, path, notes),
  };
}
