import { type Point, unitAlong } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { BorderSide } from './BorderSide.ts';

/** Two walls that look at each other across the room. */
export interface FacingSides {
  readonly walls: readonly [string, string];
  /** Between the lines at both walls' gaps, half way along what they face each other over. */
  readonly run: Ticks;
  /** Direction from one to the other. */
  readonly across: Point;
}

/** Walls whose directions differ by more than about eleven degrees do not face each other. */
const FACING = -0.98;

/** Directions that differ by more than about 45 degrees are two. */
const OTHER = 0.7;

/**
 * Of walls that face each other those that do so over the greatest length, or two that are named; then of those that face each other
 * the other way the longest. Empty where none do, or the named ones do not.
 */
export function facingSides(
  sides: readonly BorderSide[],
  named?: readonly [string, string],
): readonly FacingSides[] {
  const pairs = sides.flatMap((side, i) => sides.slice(i + 1).flatMap((other) => facing(side, other) ?? []));
  const first = longest(
    named ? pairs.filter(({ walls }) => named.every((wall) => walls.includes(wall))) : pairs,
  );
  if (!first) return [];
  const [ux, uy] = first.across;
  const other = longest(pairs.filter(({ across: [vx, vy] }) => Math.abs(ux * vx + uy * vy) < OTHER));
  return other ? [first, other] : [first];
}

type Facing = FacingSides & { readonly over: number };

function longest(pairs: readonly Facing[]): Facing | undefined {
  return pairs.reduce<Facing | undefined>(
    (best, next) => (best && best.over >= next.over ? best : next),
    undefined,
  );
}

function facing(one: BorderSide, other: BorderSide): Facing | undefined {
  const [ux, uy] = unitAlong(one.from, one.to);
  const [vx, vy] = unitAlong(other.from, other.to);
  if (ux * vx + uy * vy > FACING) return undefined;
  const seen = ([x, y]: Point) => ({
    along: (x - one.from[0]) * ux + (y - one.from[1]) * uy,
    away: (y - one.from[1]) * ux - (x - one.from[0]) * uy,
  });
  const [far, near, length] = [seen(other.from), seen(other.to), seen(one.to).along];
  const [low, high] = [Math.max(0, near.along), Math.min(length, far.along)];
  const part = ((low + high) / 2 - near.along) / (far.along - near.along);
  const away = near.away + part * (far.away - near.away);
  if (high <= low || away <= 0) return undefined;
  const run = Math.round(away) - one.facts.gap - other.facts.gap;
  return { walls: [one.wall, other.wall], run, across: [-uy, ux], over: high - low };
}
