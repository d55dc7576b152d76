import type { Point } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';

/** The doorway through which the setter leaves. */
export interface WayOut {
  readonly name: string;
  /** Middle of its closed-door line, in the pattern's frame. */
  readonly at: Point;
  /** That line, the floor on its left. */
  readonly line: { readonly from: Point; readonly to: Point };
  readonly only: boolean;
}

/** The only doorway, one marked as the only way out, or the first in the order of the walls; none where there is no doorway. */
export function wayOutOf(job: Job, surface: SurfaceSpec | undefined, layout: Layout): WayOut | undefined {
  const lines = layout.frame.edges.filter(({ id }) => id.endsWith(':line'));
  const marked = new Set(surface?.doorways.filter(({ onlyExit }) => onlyExit).map(({ name }) => name));
  const line = lines.find(({ name }) => marked.has(name)) ?? lines[0];
  if (!line) return undefined;
  const at: Point = [(line.from[0] + line.to[0]) / 2, (line.from[1] + line.to[1]) / 2];
  return {
    name: line.name,
    at,
    line,
    only: lines.length === 1 || marked.has(line.name) || job.access.onlyExit,
  };
}
