import { intersect, type Shape } from '../../geometry/index.ts';
import { type Box, corners } from '../boxes.ts';
import { deepestIn } from '../deepestIn.ts';
import type { Spot } from '../Mark.ts';
import { mmPerTick } from '../Scale.ts';

/** A deep spot of something on the paper, and how far that is from its sides, in mm. */
export interface Deep {
  readonly at: Spot;
  readonly room: number;
}

const perTick = mmPerTick(1);

/** The deepest spot of each part of shapes, in ticks, that lies in a box of mm. */
export function deepest(shapes: readonly Shape[], box: Box): readonly Deep[] {
  const window = corners(box).map(([x, y]) => [Math.round(x / perTick), Math.round(y / perTick)] as const);
  return intersect(shapes, [{ outer: window, holes: [] }]).map((shape) => {
    const { at, room } = deepestIn(shape);
    return { at: [at[0] * perTick, at[1] * perTick], room: room * perTick };
  });
}
