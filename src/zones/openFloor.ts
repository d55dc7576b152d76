import { type Point, type Ring, type Shape, simplified, subtract, unite } from '../geometry/index.ts';
import type { Layout } from '../layout/Layout.ts';
import { PASSAGE } from '../trade/index.ts';
import { DENT } from './tiledOver.ts';
import type { WayOut } from './wayOutOf.ts';

/** The floor of a room that one can step on before any tile is laid, together with what lies beyond its way out. */
export interface OpenFloor {
  readonly open: readonly Shape[];
  /** The floor on the other side of the way out, as far as a person needs to stand on it. */
  readonly beyond: Ring;
  /** The middle of it. */
  readonly out: Point;
}

/** How one leaves a floor: by which way out, over which floor. */
export interface Leaving {
  readonly wayOut: WayOut;
  readonly floor: OpenFloor;
}

/** The floor less what stands in it, from wall to wall and out through the doorway. */
export function openFloor(layout: Layout, wayOut: WayOut): OpenFloor {
  const beyond = beyondOf(wayOut);
  const ground = unite([
    { outer: layout.frame.outline, holes: [] },
    { outer: beyond, holes: [] },
  ]);
  const out: Point = [(beyond[0]![0] + beyond[2]![0]) / 2, (beyond[0]![1] + beyond[2]![1]) / 2];
  return { open: simplified(subtract(ground, solidsOf(layout)), DENT), beyond, out };
}

/** Floor lies on the left of the way out's line. */
function beyondOf({ line: { from, to } }: WayOut): Ring {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const share = (2 * PASSAGE.value) / Math.hypot(dx, dy);
  const [x, y] = [Math.round(dy * share), Math.round(-dx * share)];
  return [from, [from[0] + x, from[1] + y], [to[0] + x, to[1] + y], to];
}

/** What one cannot step over. */
function solidsOf({ frame }: Layout): Shape[] {
  return frame.obstacles
    .filter(({ facts: { meets } }) => meets !== 'flange' && meets !== 'pipe')
    .map(({ ring }) => ({ outer: ring, holes: [] }));
}
