import type { System } from '../measure/index.ts';
import type { Job, SurfaceSpec, TileSpec } from './Job.ts';
import type { GivenJob } from './jobSchema.ts';
import { buildBase } from './sections/base.ts';
import { type Notes, trouble } from './sections/Notes.ts';
import { buildPrint } from './sections/print.ts';
import { buildProducts } from './sections/products.ts';
import { buildSawAndWaste } from './sections/sawAndWaste.ts';
import { buildSiteFacts } from './sections/site.ts';
import { buildSurface } from './sections/surface.ts';
import { buildTiles } from './sections/tile.ts';
import { buildWho } from './sections/who.ts';
import { buildWork } from './sections/work.ts';
import type { Trouble } from './shape/Trouble.ts';

function buildSurfaces(given: GivenJob, tiles: readonly TileSpec[], notes: Notes): readonly SurfaceSpec[] {
  const floors = Object.entries(given.floors ?? {});
  if (given.floor && floors.length > 0) trouble(notes, 'floorAndFloors', ['floors'], {}, true);
  if (!given.floor && floors.length === 0) trouble(notes, 'missing', ['floor'], { key: 'floor' }, true);
  const laid = { tiles, joint: given.joint };
  const one = given.floor ? [buildSurface('floor', given.floor, laid, ['floor'], notes)] : [];
  return [...one, ...floors.map(([name, floor]) => buildSurface(name, floor, laid, ['floors', name], notes))];
}

/** A job from a file whose values are read: defaults filled in, names checked against one another. */
export function buildJob(
  given: GivenJob,
  slug: string,
  system: System,
): { readonly job: Job; readonly troubles: readonly Trouble[] } {
  const notes: Notes = { system, troubles: [], defaults: [] };
  const who = buildWho(given, notes);
  const tiles = buildTiles(given.tile, given.joint, notes);
  if (tiles.length === 0) trouble(notes, 'noTile', ['tile'], {}, true);
  const surfaces = buildSurfaces(given, tiles, notes);
  const job: Job = {
    slug,
    ...who,
    ...(given.site ? { site: buildSiteFacts(given.site) } : {}),
    print: buildPrint(given.print, notes),
    work: buildWork(given.work, who.revision.date, notes),
    tiles,
    joint: given.joint,
    surfaces,
    base: buildBase(given.base, tiles, surfaces, notes),
    products: buildProducts(given.products, tiles, given.joint, notes),
    ...buildSawAndWaste(given, notes),
    defaults: notes.defaults,
  };
  return { job, troubles: notes.troubles };
}
