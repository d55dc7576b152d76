import { distancePointSegment, type Point } from '../geometry/index.ts';

/** A corner of a piece and what leads on from it: a straight edge, or an arc of the circle with that index. */
export interface Corner {
  readonly at: Point;
  readonly arc?: number;
  /** Middle of the curve that leads on from it, along a curved wall. */
  readonly via?: Point;
}

/**
 * Drops corners that lie within `tolerance` ticks of the line between their neighbours, the least of them first; ends of arcs stay.
 * An edge longer than that on a side of the tile stays on it: where a wall takes off no more than the tip between two of them, the
 * corner of the tile stands for the tip.
 *
 * A wall cut by many tiles, and two walls in one line with a doorway between, bend by a tick or two where they were rounded: no
 * saw can follow that.
 *
 * @param onSide whether a line lies on a side of the tile; none does unless told.
 * @example straighten([{ at: [0, 0] }, { at: [50, 1] }, { at: [100, 0] }, { at: [100, 90] }], 4).length //=> 3
 * @example straighten([{ at: [0, 0] }, { at: [50, 1] }, { at: [100, 0] }, { at: [100, 90] }], 4, ([, y], [, to]) => y + to === 0).length //=> 3
 */
export function straighten(
  corners: readonly Corner[],
  tolerance: number,
  onSide: (from: Point, to: Point) => boolean = () => false,
): Corner[] {
  const held = (from: Point, to: Point) =>
    onSide(from, to) && Math.hypot(to[0] - from[0], to[1] - from[1]) > tolerance;
  const kept = withTips(corners, tolerance, held);
  while (kept.length > 3) {
    let least = tolerance;
    let at = -1;
    for (let i = 0; i < kept.length; i++) {
      const bend = bendAt(kept, i, held);
      if (bend <= least && (at < 0 || bend < least)) {
        least = bend;
        at = i;
      }
    }
    if (at < 0) break;
    kept.splice(at, 1);
  }
  return kept;
}

type Held = (from: Point, to: Point) => boolean;

function bendAt(corners: readonly Corner[], i: number, held: Held): number {
  const before = corners[(i + corners.length - 1) % corners.length]!;
  const here = corners[i]!;
  const after = corners[(i + 1) % corners.length]!;
  if ([here, before].some(isRound)) return Number.POSITIVE_INFINITY;
  const holds = held(before.at, here.at) || held(here.at, after.at);
  if (holds && !held(before.at, after.at)) return Number.POSITIVE_INFINITY;
  return distancePointSegment(here.at, before.at, after.at);
}

const isRound = ({ arc, via }: Corner) => arc !== undefined || via !== undefined;

const isUpright = (from: Point, to: Point) => Math.abs(from[0] - to[0]) < Math.abs(from[1] - to[1]);

/** Puts the tile's corner in the place of two corners between two of its sides, where it is no farther from their line than that. */
function withTips(corners: readonly Corner[], tolerance: number, held: Held): Corner[] {
  const n = corners.length;
  const at = (i: number) => corners[(i + n) % n]!;
  const tips = corners.map((from, i): Point | undefined => {
    const to = at(i + 1);
    if (n < 4 || [at(i - 1), from, to].some(isRound)) return undefined;
    if (!held(at(i - 1).at, from.at) || !held(to.at, at(i + 2).at)) return undefined;
    const upright = isUpright(at(i - 1).at, from.at);
    if (upright === isUpright(to.at, at(i + 2).at)) return undefined;
    const tip: Point = upright ? [from.at[0], to.at[1]] : [to.at[0], from.at[1]];
    return distancePointSegment(tip, from.at, to.at) <= tolerance ? tip : undefined;
  });
  return corners.flatMap((corner, i): Corner[] => {
    if (tips[(i + n - 1) % n]) return [];
    return tips[i] ? [{ at: tips[i] }] : [corner];
  });
}
