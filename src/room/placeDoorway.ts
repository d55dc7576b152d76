import type { DoorSide, DoorwaySpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import { readingSd } from './observations.ts';

/** A step of a doorway's side: how far outside the clear opening it lies and how deep behind the wall's face. */
export interface SideStep {
  readonly out: Ticks;
  readonly depth: Ticks;
}

/** A doorway put on its wall. Distances `u` run along the wall from the corner where the walk enters it. */
export interface PlacedDoorway {
  readonly spec: DoorwaySpec;
  /** Clear opening: its right and its left edge, as seen from the room. */
  readonly right: Ticks;
  readonly left: Ticks;
  /** From the wall's face to the closed-door line, first step on the face. */
  readonly rightSteps: readonly SideStep[];
  readonly leftSteps: readonly SideStep[];
  /** Everything that the doorway takes of its wall, seen from above. */
  readonly from: Ticks;
  readonly to: Ticks;
}

/** A doorway as wide as its wall may read this much wider: two standard deviations of a reading. */
const slack = 2 * readingSd;

/**
 * The outline of one side of a doorway, from the wall's face to the closed-door line: straight back; under the casing,
 * wider by the tuck; or round a post, behind which the field goes on where the post is less deep than the line.
 *
 * @example
 * sideSteps({ kind: 'plain' }, 900) //=> [{ out: 0, depth: 0 }, { out: 0, depth: 900 }]
 * sideSteps({ kind: 'undercut', tuck: 100 }, 900) //=> [{ out: 100, depth: 0 }, { out: 100, depth: 900 }]
 * sideSteps({ kind: 'post', width: 300, depth: 900 }, 900) //=> [{ out: 0, depth: 0 }, { out: 0, depth: 900 }]
 */
export function sideSteps(side: DoorSide, doorLine: Ticks): SideStep[] {
  const straight = (out: Ticks) => [
    { out, depth: 0 },
    { out, depth: doorLine },
  ];
  if (side.kind === 'undercut') return straight(side.tuck);
  if (side.kind === 'plain' || side.depth >= doorLine || side.width <= 0) return straight(0);
  const { width, depth } = side;
  return [
    { out: 0, depth: 0 },
    { out: 0, depth },
    { out: width, depth },
    { out: width, depth: doorLine },
  ];
}

const reach = (steps: readonly SideStep[]) => Math.max(...steps.map(({ out }) => out));

/**
 * Puts a doorway on a wall of the given adjusted length. A doorway that is as wide as its wall is drawn in to the
 * wall's ends where it reads up to 1/4 in too wide. `over` is how far it would stand beyond the wall's ends.
 */
export function placeDoorway(
  spec: DoorwaySpec,
  wall: { readonly length: number; readonly startsAt: string },
): { readonly placed: PlacedDoorway; readonly over: Ticks } {
  const length = Math.round(wall.length);
  const start = spec.fromCorner === wall.startsAt ? spec.from : length - spec.from - spec.clear;
  // A line on the wall's own face leaves no recess, so nothing to tuck under or to notch round.
  const flush = spec.doorLine <= 0;
  const rightSteps = flush ? [] : sideSteps(spec.right, spec.doorLine);
  const leftSteps = flush ? [] : sideSteps(spec.left, spec.doorLine);
  const before = flush ? 0 : reach(rightSteps);
  const after = flush ? 0 : reach(leftSteps);
  const over = Math.max(before - start, start + spec.clear + after - length, 0);
  const drawn = over <= slack;
  const right = drawn ? Math.max(start, before) : start;
  const left = drawn ? Math.min(start + spec.clear, length - after) : start + spec.clear;
  return {
    placed: { spec, right, left, rightSteps, leftSteps, from: right - before, to: left + after },
    over: drawn ? 0 : over,
  };
}
