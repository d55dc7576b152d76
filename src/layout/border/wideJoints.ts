import { bounds } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';

/** A border beside which a joint of the field's pattern falls, so that the joint there is wider than the others by `more`. */
export interface WideJoint {
  readonly edge: string;
  readonly axis: 0 | 1;
  /** Whether the field lies above the border on the axis, or below. */
  readonly side: 'low' | 'high';
  readonly more: Ticks;
  /** The pieces along it, by their place in the list. */
  readonly pieces: readonly number[];
}

/** Rounding of corners. */
const ROUNDING: Ticks = 2;

/** Where whole rows of the field end short of the joint at a border that runs along them; borders that lean cut their tiles anyway. */
export function wideJoints(
  edges: readonly RoomEdge[],
  pieces: readonly Pick<LaidPiece, 'shape'>[],
  joint: Ticks,
): WideJoint[] {
  const borders = edges.filter(({ meets }) => meets === 'border');
  if (borders.length === 0) return [];
  const boxes = pieces.map(({ shape }) => bounds(shape.outer));
  return borders.flatMap((edge): WideJoint[] => {
    const axis = axisOf(edge);
    if (axis === null) return [];
    const [from, to] = [edge.from[1 - axis]!, edge.to[1 - axis]!];
    // The field is on the left of its edges: above one that runs on x, on the lower side of one that runs back.
    const side = (axis === 1) === to > from ? 'low' : 'high';
    const line = edge.from[axis]!;
    const near = boxes.flatMap((box, at): { off: Ticks; at: number }[] => {
      const [low, high, begin, end] =
        axis === 0 ? [box.minX, box.maxX, box.minY, box.maxY] : [box.minY, box.maxY, box.minX, box.maxX];
      const off = (side === 'low' ? low - line : line - high) - joint;
      const beside = Math.min(end, Math.max(from, to)) - Math.max(begin, Math.min(from, to)) > joint;
      return beside && off > -joint && off <= joint ? [{ off, at }] : [];
    });
    const more = Math.min(...near.map(({ off }) => off));
    if (near.length === 0 || more <= ROUNDING) return [];
    return [{ edge: edge.id, axis, side, more, pieces: near.map(({ at }) => at) }];
  });
}

/** The axis that an edge is square to; null where it leans. */
function axisOf({ from, to }: RoomEdge): 0 | 1 | null {
  if (Math.abs(from[0] - to[0]) <= ROUNDING) return 0;
  return Math.abs(from[1] - to[1]) <= ROUNDING ? 1 : null;
}
