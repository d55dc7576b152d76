import { bounds, distanceShapes, type Point, type Ring, type Shape } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { bareOver } from './bareOver.ts';
import { openFloor } from './openFloor.ts';
import type { Band } from './partsInOrder.ts';
import { isInReach, standingOn } from './standingOn.ts';
import { tiledOver } from './tiledOver.ts';
import type { WayOut } from './wayOutOf.ts';

/** The floor before a part is set, as one sees it who must lay it. */
export interface BareFloor {
  /** Whether a piece can be laid from where one comes to from the way out, without stepping on tile. */
  readonly isReached: (piece: Piece) => boolean;
}

/**
 * The floor that is still bare before each part in the order of work. What stands in it parts it, and so does a passage too narrow for a
 * person. Undefined where nobody passes through the way out.
 */
export function bareFloors(
  layout: Layout,
  parts: readonly Band[],
  wayOut: WayOut,
): readonly BareFloor[] | undefined {
  const floor = openFloor(layout, wayOut);
  const floors = parts.map((_, i) => {
    const laid = parts.slice(0, i).flatMap((part) => coverOf(layout, part));
    return bareFloor(bareOver(floor, laid), floor.out);
  });
  return floors.some((one) => one === undefined) ? undefined : floors.flatMap((one) => one ?? []);
}

function bareFloor(bare: readonly Shape[], out: Point): BareFloor | undefined {
  const standing = standingOn(bare, out);
  if (!standing) return undefined;
  const { own, others } = standing;
  return {
    isReached: ({ shape }) => {
      if (!isInReach(shape, standing)) return false;
      const away = distanceShapes(shape, own);
      return others.every((other) => distanceShapes(shape, other) >= away);
    },
  };
}

/** What a part covers: all between its seams, and what of its pieces lies beyond them. */
function coverOf(layout: Layout, { pieces, axis, from, to }: Band): Shape[] {
  const { minX, minY, maxX, maxY } = bounds(layout.frame.outline);
  const low = Math.max(from, axis === 0 ? minX : minY);
  const high = Math.min(to, axis === 0 ? maxX : maxY);
  const band: Ring =
    axis === 0
      ? [[low, minY], [high, minY], [high, maxY], [low, maxY]]
      : [[minX, low], [maxX, low], [maxX, high], [minX, high]]; // biome-ignore format: boxes on lines
  const beyond = pieces.filter(({ shape }) =>
    shape.outer.some((point) => point[axis] < from || point[axis] > to),
  );
  return [{ outer: band, holes: [] }, ...tiledOver(layout, beyond)];
}
