import type { Layout, Piece } from '../layout/Layout.ts';
import { bareFloors } from './bareFloors.ts';
import { meetingLines } from './meetingLines.ts';
import type { Band, Part } from './partsInOrder.ts';
import type { WayOut } from './wayOutOf.ts';

/**
 * The same parts so that a setter backs out of the room: what of a part could be reached only over tile of those before it goes with the
 * last of them from which it is reached. What can be reached from none stays where it is.
 */
export function backingOut(
  layout: Layout,
  parts: readonly Band[],
  wayOut: WayOut | undefined,
): readonly Part[] {
  const floors = wayOut && parts.length > 1 ? bareFloors(layout, parts, wayOut) : undefined;
  if (!floors) return parts;
  const groups = parts.map((): Piece[] => []);
  let moved = false;
  for (const [i, { pieces }] of parts.entries()) {
    for (const piece of pieces) {
      const at = floors.slice(0, i + 1).findLastIndex(({ isReached }) => isReached(piece));
      moved ||= at >= 0 && at < i;
      groups[at < 0 ? i : at]!.push(piece);
    }
  }
  if (!moved) return parts;
  const left = groups.filter((pieces) => pieces.length > 0);
  return left.map((pieces, i) => {
    const seam = meetingLines(pieces, left.slice(i + 1).flat(), layout.pattern.joint);
    return seam.length > 0 ? { pieces, seam } : { pieces };
  });
}
