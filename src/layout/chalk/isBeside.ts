import { distanceSegments, type Point, unitAlong } from '../../geometry/index.ts';
import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { Stretch } from './chalkLine.ts';
import type { Faces } from './Faces.ts';
import { hasFace } from './hasFace.ts';

/** A face that leans more than this against a line, as a sine, does not run beside it: 10 degrees. */
const MOST_LEAN = Math.sin(Math.PI / 18);

/** Part of a line that a face must run beside before a string cannot be plucked there; common practice, no source. */
const MOST_BESIDE = 0.5;

/**
 * How near to a wall a line is of no use: half a tile, since it guides no whole one there, and never under
 * 2 in or 50 mm, the room that fingers need to pluck the string; common practice, no source.
 */
export function roomBeside(module: Ticks, system: System): Ticks {
  return Math.max(module / 2, system === 'inches' ? 2 * TICKS_PER_INCH : 50 * TICKS_PER_MM);
}

/**
 * How near to a wall the two lines that all others are measured from should not lie: about a tile, 3/4 of it,
 * of large tiles 12 in or 300 mm; common practice, no source.
 */
export function roomBesideMain(module: Ticks, system: System): Ticks {
  const most = system === 'inches' ? 12 * TICKS_PER_INCH : 300 * TICKS_PER_MM;
  return Math.max(roomBeside(module, system), Math.min(0.75 * module, most));
}

/** Whether a wall, or a face of what stands in the room, runs nearer than `near` beside at least half of a stretch. */
export function isBeside(stretch: Pick<Stretch, 'from' | 'to'>, { edges }: Faces, near: Ticks): boolean {
  const { from, to } = stretch;
  const [dx, dy] = unitAlong(from, to);
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const part = ([x, y]: Point) => Math.min(far, Math.max(0, (x - from[0]) * dx + (y - from[1]) * dy));
  const covered = edges
    .filter((edge) => stands(edge) && runsWith(edge, dx, dy))
    .filter((edge) => distanceSegments(from, to, edge.from, edge.to) < near)
    .reduce((sum, edge) => sum + Math.abs(part(edge.to) - part(edge.from)), 0);
  return covered >= MOST_BESIDE * far;
}

/** Nearer than this to a corner a mark stands on its rounding and no tape can be hooked there: 1 in or 25 mm; common practice, no source. */
const CORNER: Readonly<Record<System, Ticks>> = { inches: TICKS_PER_INCH, mm: 25 * TICKS_PER_MM };

/** Whether a stretch ends at a corner of what stands there, which it would miss if that stood a hair off. */
export function endsAtCorner(
  { from, to }: Pick<Stretch, 'from' | 'to'>,
  faces: Faces,
  system: System,
): boolean {
  const near = ([x, y]: Point) =>
    [from, to].some((end) => Math.hypot(x - end[0], y - end[1]) < CORNER[system]);
  return faces.edges.some((edge) => !edge.arc && stands(edge) && (near(edge.from) || near(edge.to)));
}

/** A wall that no tape reaches stands there all the same. */
function stands({ meets }: RoomEdge): boolean {
  return hasFace({ touch: true, meets });
}

function runsWith({ from, to }: RoomEdge, dx: number, dy: number): boolean {
  const [ux, uy] = unitAlong(from, to);
  return Math.abs(ux * dy - uy * dx) <= MOST_LEAN;
}
