import type { SurfaceSpec } from '../job/Job.ts';
import { mean, type Ticks } from '../measure/index.ts';

/** A distance between two corners, as read once or more often. */
export interface Observation {
  readonly id: string;
  readonly kind: 'wall' | 'diagonal';
  /** Numbers of the two corners. */
  readonly from: number;
  readonly to: number;
  readonly read: readonly Ticks[];
  readonly mean: Ticks;
}

/** Standard deviation of one tape reading between two faces: 1/8 in. Common practice, no source. */
export const readingSd: Ticks = 1016;

/** All distances of a surface: its walls in the order walked, then its diagonals. */
export function observations(surface: SurfaceSpec): Observation[] {
  const numbers = new Map(surface.corners.map((corner, i) => [corner.name, i]));
  const observe = (kind: Observation['kind']) => (spec: SurfaceSpec['diagonals'][number]) => ({
    id: spec.id,
    kind,
    from: numbers.get(spec.from) ?? -1,
    to: numbers.get(spec.to) ?? -1,
    read: spec.readings,
    mean: mean(spec.readings),
  });
  return [...surface.walls.map(observe('wall')), ...surface.diagonals.map(observe('diagonal'))];
}

/** How many different pairs of corners have been read. */
export function distinctPairs(all: readonly Observation[]): number {
  return new Set(all.map(({ from, to }) => `${Math.min(from, to)} ${Math.max(from, to)}`)).size;
}
