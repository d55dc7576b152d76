import type { Job, SurfaceSpec, TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import { tilesLaid } from '../layout/tilesLaid.ts';

/** A surface with the tiles its pattern is made of, and its layout. */
export interface Laid {
  readonly spec: SurfaceSpec;
  /** The first of them. */
  readonly tile: TileSpec;
  readonly tiles: readonly TileSpec[];
  readonly layout: Layout;
}

/** Surfaces that have both a layout and a tile, in the order of the job. */
export function laidSurfaces(job: Job, layouts: readonly Layout[]): readonly Laid[] {
  return job.surfaces.flatMap((spec) => {
    const layout = layouts.find(({ surface }) => surface === spec.name);
    const tile = job.tiles.find(({ key }) => key === spec.pattern.tile);
    if (!layout || !tile) return [];
    const keys = new Set(tilesLaid(layout));
    return [
      {
        spec,
        tile,
        tiles: [tile, ...job.tiles.filter(({ key }) => keys.has(key) && key !== tile.key)],
        layout,
      },
    ];
  });
}
