import { type Point, unitAlong } from '../../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { TapeEnd } from '../Layout.ts';
import type { Faces } from './Faces.ts';
import { hasFace } from './hasFace.ts';
import { wallAhead } from './wallAhead.ts';

/** An end that a tape may be hooked on or butted against, on one side of a mark. */
export interface EndBeside extends TapeEnd {
  /** -1 behind the mark as the edge is walked, 1 before it. */
  readonly side: -1 | 1;
  readonly isCorner: boolean;
  /** Whether the tape crosses a doorway on the way there. */
  readonly across: boolean;
}

/** What stands nearer to a wall than a blade is wide keeps a tape from lying along it; common practice, no source. */
const BLADE: Ticks = TICKS_PER_INCH;

/** Rounding of a corner may put what touches a wall this far off. */
const HAIR = 4;

/**
 * The ends from which a mark on an edge can be measured along it, at most one a side: the wall's corner where
 * the tape lies free as far as there and the wall beyond has a face; else what stands in the way, the jamb, or the corner of
 * what the tape lies along; the wall where that corner is in it or too near to it for a hook.
 */
export function tapeEnds(edge: RoomEdge, at: Point, faces: Faces): EndBeside[] {
  const wall = faces.corners.findIndex(({ name }, i) => `${name}-${next(faces, i).name}` === edge.name);
  return ([-1, 1] as const).flatMap((side) => {
    const stop = blockedBy(edge, at, side, faces);
    const corner = wall < 0 ? undefined : side < 0 ? faces.corners[wall] : next(faces, wall);
    const far = corner && distance(at, corner.at);
    if (corner && far !== undefined && !(stop && stop.distance < far - HAIR)) {
      if (hasFace(beyondCorner(edge, corner.at, side, faces) ?? edge))
        return [
          { end: corner.name, distance: far, side, isCorner: true, across: !endsAt(edge, side, corner.at) },
        ];
    } else if (stop) return stop.end === undefined ? [] : [beside(stop.end, stop.distance, side)];
    const wallEnd = wallAhead(edge, at, side, faces, BLADE);
    return wallEnd ? [beside(wallEnd.end, wallEnd.distance, side)] : jamb(edge, at, side, faces);
  });
}

function beside(end: string, far: Ticks, side: -1 | 1): EndBeside {
  return { end, distance: far, side, isCorner: false, across: false };
}

function endsAt(edge: RoomEdge, side: -1 | 1, corner: Point): boolean {
  return same(side < 0 ? edge.from : edge.to, corner);
}

function next({ corners }: Faces, i: number): Faces['corners'][number] {
  return corners[(i + 1) % corners.length]!;
}

/** The edge that begins or ends at a corner and is no part of the wall itself. */
function beyondCorner(edge: RoomEdge, at: Point, side: -1 | 1, { edges }: Faces): RoomEdge | undefined {
  return edges.find((one) => one.name !== edge.name && same(side < 0 ? one.to : one.from, at));
}

/** The end of the edge itself, unless it is a corner that did not serve. */
function jamb(edge: RoomEdge, at: Point, side: -1 | 1, { edges, corners }: Faces): EndBeside[] {
  const end = side < 0 ? edge.from : edge.to;
  if (corners.some((corner) => same(corner.at, end))) return [];
  const beyond = edges.find((one) => one !== edge && same(side < 0 ? one.to : one.from, end));
  // Where two chords of a curved wall meet there is nothing to hook a tape on.
  if (beyond?.arc && beyond.name === edge.name) return [];
  return [beside(beyond?.id ?? edge.name, distance(at, end), side)];
}

/** The first thing that stands along an edge on one side of a mark; its face is an end too, where it has one. */
function blockedBy(
  edge: RoomEdge,
  at: Point,
  side: -1 | 1,
  { obstacles }: Faces,
): { readonly end: string | undefined; readonly distance: Ticks } | undefined {
  const [ux, uy] = unitAlong(edge.from, edge.to);
  // The open floor lies to the left of a wall and to the right of what stands in the room.
  const left = obstacles.some((one) => one.edges.includes(edge)) ? -1 : 1;
  const seen = ([x, y]: Point): Point => [
    side * (ux * (x - at[0]) + uy * (y - at[1])),
    left * (ux * (y - at[1]) - uy * (x - at[0])),
  ];
  const hits = obstacles
    .filter((one) => !one.edges.includes(edge))
    .flatMap(({ ring, edges }) => {
      const far = beginsAt(ring.map(seen));
      return far === undefined ? [] : [{ face: edges.find(hasFace)?.name, far: Math.round(far) }];
    });
  const [first] = hits.sort((a, b) => a.far - b.far);
  return first && { end: first.face, distance: first.far };
}

/** How far along a tape a ring first comes under its blade, the tape going up the first axis from 0; undefined where it does not. */
function beginsAt(ring: readonly Point[]): number | undefined {
  const under = ring.flatMap((from, i) => underBlade(from, ring[(i + 1) % ring.length]!));
  const ahead = under.filter((along) => along >= 0);
  return ahead.length > 0 ? Math.min(...ahead) : undefined;
}

/** Where the part of a side that lies under the blade begins and ends along the tape; what only touches the wall is not under it. */
function underBlade([x, y]: Point, [u, v]: Point): readonly number[] {
  if (Math.max(y, v) <= HAIR || Math.min(y, v) >= BLADE) return [];
  const at = (off: number) => (y === v ? x : x + ((u - x) * (off - y)) / (v - y));
  const [low, high] = [Math.max(Math.min(y, v), HAIR), Math.min(Math.max(y, v), BLADE)];
  return y === v ? [x, u] : [at(low), at(high)];
}

function distance(p: Point, q: Point): Ticks {
  return Math.round(Math.hypot(p[0] - q[0], p[1] - q[1]));
}

function same(p: Point, q: Point): boolean {
  return p[0] === q[0] && p[1] === q[1];
}
