import type { SurfaceSpec } from '../job/Job.ts';
import { mean, type Ticks } from '../measure/index.ts';
import type { ReadingKind } from './Room.ts';

/** What was read once or more often. */
interface Read {
  readonly id: string;
  readonly kind: ReadingKind;
  readonly read: readonly Ticks[];
  readonly mean: Ticks;
  /** Standard deviation of one reading. */
  readonly sd: Ticks;
}

/** A distance between two corners, given by their numbers. */
export interface Distance extends Read {
  readonly kind: 'wall' | 'diagonal';
  readonly from: number;
  readonly to: number;
}

/** The distance between marks on both walls of a corner: `before` on the one that comes to it, `after` on the other. */
export interface CornerDistance extends Read {
  readonly kind: 'cornerCheck';
  readonly corner: number;
  readonly before: Ticks;
  readonly after: Ticks;
}

/** A corner's place along a snapped line or its distance square off it. */
export interface LineOffset extends Read {
  readonly kind: 'baseLine';
  readonly corner: number;
  readonly axis: 'along' | 'off';
}

export type Observation = Distance | CornerDistance | LineOffset;

/** Standard deviation of one tape reading between two faces: 1/8 in. Common practice, no source. */
export const readingSd: Ticks = 1016;

/** All distances between corners: walls in the order walked, then diagonals. */
export function distances(surface: SurfaceSpec): Distance[] {
  const numbers = new Map(surface.corners.map((corner, i) => [corner.name, i]));
  const observe = (kind: Distance['kind']) => (spec: SurfaceSpec['diagonals'][number]) => ({
    id: spec.id,
    kind,
    from: numbers.get(spec.from) ?? -1,
    to: numbers.get(spec.to) ?? -1,
    read: spec.readings,
    mean: mean(spec.readings),
    sd: spec.sd ?? surface.precision.sd,
  });
  return [...surface.walls.map(observe('wall')), ...surface.diagonals.map(observe('diagonal'))];
}

/** Everything read of a surface: its distances, then corner checks, then what was read from the base line. */
export function observations(surface: SurfaceSpec): Observation[] {
  const numbers = new Map(surface.corners.map((corner, i) => [corner.name, i]));
  const { sd } = surface.precision;
  const at = (corner: string) => numbers.get(corner) ?? -1;
  const checks = surface.cornerChecks.map(({ corner, legs: [before, after], readings }): Observation => {
    const read = { read: readings, mean: mean(readings), sd };
    return { id: corner, kind: 'cornerCheck', corner: at(corner), before, after, ...read };
  });
  const offsets = surface.baseLine.flatMap((one) =>
    (['along', 'off'] as const).map((axis): Observation => {
      const read = { read: [one[axis]], mean: one[axis], sd };
      return { id: `${one.corner}:${axis}`, kind: 'baseLine', corner: at(one.corner), axis, ...read };
    }),
  );
  return [...distances(surface), ...checks, ...offsets];
}

/** How many different things have been read: pairs of corners, corners checked, places along and off the base line. */
export function distinctCount(all: readonly Observation[]): number {
  const name = (one: Observation) =>
    one.kind === 'wall' || one.kind === 'diagonal'
      ? `${Math.min(one.from, one.to)} ${Math.max(one.from, one.to)}`
      : one.id;
  return new Set(all.map(name)).size;
}
