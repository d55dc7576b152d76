import { shapeArea } from '../geometry/index.ts';
import type { PacketPiece } from '../packet/Packet.ts';
import { boxOf } from './boxes.ts';
import type { Scale } from './Scale.ts';

/** A piece that takes less of the paper than this, in square mm, or is narrower on it, in mm, has no hatch that can be seen. */
const least = { area: 8, wide: 0.8 } as const;

/** So many of the smallest at most: where more pieces are as small, the plan is too small for all of them. */
const most = 12;

/** Names of the pieces that are too small on paper to be found by their look, the smallest first: a plan leads them out before all others. */
export function specks(pieces: readonly PacketPiece[], { paperMmPerTick }: Scale): ReadonlySet<string> {
  const small = pieces.flatMap(({ id, shape, whole }) => {
    const { left, right, bottom, top } = boxOf(shape.outer);
    const area = shapeArea(shape) * paperMmPerTick ** 2;
    const long = Math.hypot(right - left, top - bottom) * paperMmPerTick;
    return !whole && (area < least.area || area / long < least.wide) ? [{ id, area }] : [];
  });
  const inOrder = [...small].sort((a, b) => a.area - b.area);
  return new Set(inOrder.slice(0, most).map(({ id }) => id));
}
