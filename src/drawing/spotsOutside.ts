import { type Box, boxOf, boxRound, grow, overlap, segmentMeets, within } from './boxes.ts';
import type { BoxIndex } from './boxIndex.ts';
import { inRings } from './inRings.ts';
import type { Spot } from './Mark.ts';

/** A ring with the box round it: most rings lie far from most places, and a pipe's has many corners. */
interface Boxed {
  readonly ring: readonly Spot[];
  readonly box: Box;
}

/** Where names are led to: over the paper outside the outline, or where no tile lies inside it. */
export interface Outside {
  readonly paper: Box;
  readonly outline: Boxed;
  readonly bare: readonly Boxed[];
}

const boxed = (ring: readonly Spot[]): Boxed => ({ ring, box: boxOf(ring) });

export function outsideOf(
  paper: Box,
  outline: readonly Spot[],
  bare: readonly (readonly Spot[])[] = [],
): Outside {
  return { paper, outline: boxed(outline), bare: bare.map(boxed) };
}

/** Names that are led out stand this far outside the outline, on a grid this fine, in mm. */
const off = 2;
const grid = 2;

/** Whether a ring runs through a box or comes too near to it. */
const isNear = ({ ring, box: round }: Boxed, box: Box): boolean =>
  overlap(round, box, 2 * off) && ring.some((a, i) => segmentMeets(a, ring[i + 1] ?? ring[0]!, box, off));

/** Whether a box stands on the paper and off every ring. */
export function standsOutside(box: Box, { paper, outline, bare }: Outside): boolean {
  return within(box, paper) && !isNear(outline, box) && !bare.some((ring) => isNear(ring, box));
}

/** Whether no tile lies at a spot. */
function isBare(spot: Spot, { outline, bare }: Outside): boolean {
  const inside = ({ ring, box }: Boxed) => within(boxRound(spot, 0, 0), box) && inRings(spot, [ring]);
  return !inside(outline) || bare.some(inside);
}

/**
 * Gives the places on a grid within `longest` mm of a spot, nearest first, at which a square of `least` mm finds room: where
 * not even that does, no name need be tried. Each place is looked at once, when it is first asked for.
 */
export function spotsOutside(where: Outside, taken: BoxIndex, least: number, longest: number) {
  const { paper } = where;
  const columns = Math.floor((paper.right - paper.left) / grid);
  const rows = Math.floor((paper.top - paper.bottom) / grid);
  const known = new Map<number, boolean>();
  const hasRoom = (spot: Spot): boolean => {
    const box = boxRound(spot, least, least);
    return (
      isBare(spot, where) &&
      standsOutside(box, where) &&
      !taken.some(grow(box, 1), (other) => overlap(box, other, 1))
    );
  };
  const isOpen = (i: number, spot: Spot): boolean => {
    const open = known.get(i) ?? hasRoom(spot);
    known.set(i, open);
    return open;
  };
  const range = (from: number, to: number, count: number) =>
    [Math.max(0, Math.floor(from / grid) - 1), Math.min(count - 1, Math.ceil(to / grid))] as const;
  return ([x, y]: Spot): readonly Spot[] => {
    const found: { readonly at: Spot; readonly far: number }[] = [];
    const [left, right] = range(x - longest - paper.left, x + longest - paper.left, columns);
    const [low, high] = range(y - longest - paper.bottom, y + longest - paper.bottom, rows);
    for (let row = low; row <= high; row += 1)
      for (let column = left; column <= right; column += 1) {
        const at: Spot = [paper.left + (column + 0.5) * grid, paper.bottom + (row + 0.5) * grid];
        const far = Math.hypot(at[0] - x, at[1] - y);
        if (far <= longest && isOpen(row * columns + column, at)) found.push({ at, far });
      }
    return found.sort((a, b) => a.far - b.far).map(({ at }) => at);
  };
}
