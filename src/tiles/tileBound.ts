import { turnPoint } from '../cuts/TileBox.ts';
import { distanceShapes, transformShape } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { CutClass } from './CutClass.ts';

/**
 * A number of tiles that no plan for the cut pieces can go under, each piece at its exact size and in its own place in its tile:
 * the larger of two bounds. By area; and by pieces of which no two come out of one tile, since together they are more than a
 * tile, or lie nearer than the kerf however they are turned.
 */
export function tileBound(classes: readonly CutClass[], kerf: Ticks): number {
  if (classes.length === 0) return 0;
  const tile = classes[0]!.box.length * classes[0]!.box.width;
  const area = classes.reduce((sum, { leastArea, pieces }) => sum + leastArea * pieces.length, 0);
  return Math.max(Math.ceil(area / tile - 1e-9), apart(classes, tile, kerf));
}

/** Counts pieces, the largest first, each of which needs its own tile beside all those before. */
function apart(classes: readonly CutClass[], tile: number, kerf: Ticks): number {
  const chosen: CutClass[] = [];
  let count = 0;
  for (const next of [...classes].sort((a, b) => b.leastArea - a.leastArea || a.id - b.id)) {
    if (!chosen.every((one) => neverShare(one, next, tile, kerf))) continue;
    chosen.push(next);
    count += neverShare(next, next, tile, kerf) ? next.pieces.length : 1;
  }
  return count;
}

function neverShare(a: CutClass, b: CutClass, tile: number, kerf: Ticks): boolean {
  if (a.leastArea + b.leastArea > tile) return true;
  if (!a.pinned || !b.pinned) return false;
  // Turning both alike changes nothing, so one of them stays as it lies.
  return b.turns.every((turn) => {
    const turned = transformShape(b.within, (point) => turnPoint(point, turn, b.box));
    return distanceShapes(a.within, turned) < kerf - 2;
  });
}
