import { type Point, type Ring, subtract, unitAlong } from '../../geometry/index.ts';
import type { EdgeFacts } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { RoomInFrame } from '../frame/frameRoom.ts';
import type { BorderSide } from './BorderSide.ts';
import type { CourseDepth } from './courseDepths.ts';
import { type CourseEnd, jointFacts } from './courseEnds.ts';
import { inTicks, movedLeft, type OffsetLine, offsetLine, whereMeet } from './offsetLine.ts';

/** Where a factory edge lies along a line, the room for tile reaches so far beyond it: no saw touches that edge. */
export const CLEAR: Ticks = 4;

/** What a course along one wall may cover, as a room of its own: its sides with their gaps, and the floor within them. */
export interface CourseRegion {
  readonly room: RoomInFrame;
  /** The corners of the course itself: at the wall from its begin to its end, then at its inner edge back. */
  readonly corners: Ring;
}

/** What one course along one wall is laid in. `ripped`: its outer edge is sawn. Null where its ends meet before its inner edge. */
export function courseRegion(
  side: BorderSide,
  [start, end]: readonly [CourseEnd, CourseEnd],
  depth: CourseDepth,
  ripped: boolean,
  { joint, obstacles }: { readonly joint: Ticks } & Pick<RoomInFrame, 'obstacles'>,
): CourseRegion | null {
  const { gap } = side.facts;
  const outer = offsetLine(side, gap + depth.from);
  const inner = offsetLine(side, gap + depth.to);
  const ends = [shifted(start, outer, 1), shifted(end, outer, -1)] as const;
  const corners = quad(outer, inner, ends);
  if (!runsOn(corners, outer.along)) return null;
  const laid = quad(
    offsetLine(side, gap + depth.from - (ripped ? 0 : CLEAR)),
    offsetLine(side, gap + depth.to + CLEAR),
    ends,
  );
  const wall = depth.from === 0;
  const face = offsetLine(side, wall ? 0 : gap + depth.from - joint);
  const outline = quad(face, inner, [start.line, end.line]);
  const facts: readonly (readonly [string, EdgeFacts])[] = [
    wall ? [side.wall, wallFacts(side)] : [`border:${side.wall}`, jointFacts(joint)],
    [end.id, end.facts],
    [`border:${side.wall}`, jointFacts(0)],
    [start.id, start.facts],
  ];
  const edges = facts.map(([id, own], i): RoomEdge => {
    const [from, to] = [outline[i]!, outline[(i + 1) % 4]!];
    return { ...own, id, name: id, ...(i % 2 === 0 ? { from, to } : lengthened(from, to, 2 * joint)) };
  });
  const field = subtract(
    [{ outer: laid, holes: [] }],
    obstacles.map(({ cleared }) => ({ outer: cleared, holes: [] })),
  );
  return { room: { outline, edges, obstacles, field }, corners };
}

/** Where a doorway opens, tile of the opening lies behind the course: no whole tile may take of that joint. */
function wallFacts({ facts, doorways }: BorderSide): EdgeFacts {
  return doorways.length > 0 ? { ...facts, meets: 'border' } : facts;
}

/** An end's line moved into the course by its gap. */
function shifted({ line, facts }: CourseEnd, { along }: OffsetLine, into: 1 | -1): OffsetLine {
  const left = movedLeft([0, 0], line.along, 1);
  const way = left[0] * along[0] + left[1] * along[1];
  return { ...line, at: movedLeft(line.at, line.along, Math.sign(way) * into * facts.gap) };
}

/** An end's line on past both of its corners: tile keeps its distance there too. */
function lengthened(from: Point, to: Point, by: Ticks): { readonly from: Point; readonly to: Point } {
  const [ux, uy] = unitAlong(from, to);
  const moved = ([x, y]: Point, way: number) => inTicks([x + way * ux * by, y + way * uy * by]);
  return { from: moved(from, -1), to: moved(to, 1) };
}

function quad(outer: OffsetLine, inner: OffsetLine, [start, end]: readonly [OffsetLine, OffsetLine]): Ring {
  return [whereMeet(outer, start), whereMeet(outer, end), whereMeet(inner, end), whereMeet(inner, start)].map(
    inTicks,
  );
}

/** Whether both long sides run the way of the wall. */
function runsOn([a, b, c, d]: Ring, [ux, uy]: Point): boolean {
  const along = (p: Point, q: Point) => (q[0] - p[0]) * ux + (q[1] - p[1]) * uy;
  return along(a!, b!) > CLEAR && along(d!, c!) > CLEAR;
}
