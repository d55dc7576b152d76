import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { RoomEdge } from '../../room/Room.ts';

/** A pattern of mosaic sheets as it lies: joints straight through both ways. */
export interface LaidSheets {
  readonly pattern: Pick<Pattern, 'module' | 'joint' | 'tiles'>;
  /** Chips along a sheet's length and width, which lie along x and y. */
  readonly count: readonly [number, number];
  readonly origin: Point;
}

/** An edge that leans no more than this over its length lies along the sheets. */
const STRAIGHT: Ticks = 2;

/**
 * The gap at each edge: as the job has it, or as much wider as lets tile end at a joint between chips, where that much wider is still
 * covered. An edge that leans or bends keeps its own: chips are sawn along it.
 */
export function chipGaps(edges: readonly RoomEdge[], sheets: LaidSheets): readonly Ticks[] {
  return edges.map((edge) => {
    const axis = axisOf(edge);
    if (axis === null) return edge.gap;
    const more = shortOfChip(edge, axis, sheets);
    return edge.gap + more <= edge.gapMax ? edge.gap + more : edge.gap;
  });
}

/** The axis that an edge is square to; null where it is to neither. */
function axisOf({ from, to, arc }: RoomEdge): 0 | 1 | null {
  if (arc) return null;
  if (Math.abs(from[0] - to[0]) <= STRAIGHT) return 0;
  return Math.abs(from[1] - to[1]) <= STRAIGHT ? 1 : null;
}

/** How far the last whole chip ends short of where tile may reach at an edge. */
function shortOfChip(
  { from, to, gap }: RoomEdge,
  axis: 0 | 1,
  { pattern, count, origin }: LaidSheets,
): Ticks {
  // The room is on the left of its edges: one that runs up bounds it on the right, one that runs back bounds it above.
  const isHigh = axis === 0 ? to[1] > from[1] : to[0] < from[0];
  const module = pattern.module[axis];
  const low = origin[axis] + Math.min(...pattern.tiles[0]!.ring.map((point) => point[axis]));
  const reach = isHigh ? Math.min(from[axis], to[axis]) - gap : Math.max(from[axis], to[axis]) + gap;
  // Places within one sheet and the joint after it, counted from where the sheet begins.
  const within = (((reach - low) % module) + module) % module;
  const chips = Array.from({ length: count[axis] + 1 }, (_, k) => Math.round((k * module) / count[axis]));
  const ends = isHigh ? chips.map((at) => at - pattern.joint) : chips;
  const shorts = ends.map((at) => (isHigh ? within - at : at - within)).filter((short) => short >= 0);
  return Math.min(...shorts);
}
