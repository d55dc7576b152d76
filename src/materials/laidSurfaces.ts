import type { Job, SurfaceSpec, TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';

/** A surface with the tile its pattern is made of, and its layout. */
export interface Laid {
  readonly spec: SurfaceSpec;
  readonly tile: TileSpec;
  readonly layout: Layout;
}

/** Surfaces that have both a layout and a tile, in the order of the job. */
export function laidSurfaces(job: Job, layouts: readonly Layout[]): readonly Laid[] {
  return job.surfaces.flatMap((spec) => {
    const layout = layouts.find(({ surface }) => surface === spec.name);
    const tile = job.tiles.find(({ key }) => key === spec.pattern.tile);
    return layout && tile ? [{ spec, tile, layout }] : [];
  });
}
