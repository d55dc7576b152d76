import { lineThroughShape, type Point, unitAlong } from '../../geometry/index.ts';
import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { ChalkLine } from '../Layout.ts';
import { leastApart } from './chalkLine.ts';
import type { Faces } from './Faces.ts';
import { hasFace } from './hasFace.ts';
import { tapeEnds } from './tapeEnds.ts';

/** Distances from a face to a line, as a line has them, and where on the line each of them ends. */
export interface FaceOffsets extends NonNullable<ChalkLine['offsets']> {
  readonly ends: readonly [Point, Point];
}

/** A face that leans more than this against the line, as a sine, is no face to measure it from: 10 degrees. */
const MOST_LEAN = Math.sin(Math.PI / 18);

/**
 * Distances from one long face square to a line, at two places as far apart as open floor lets: from the
 * longest face that runs with the line. Undefined where no face serves.
 */
export function faceOffsets(line: ChalkLine, faces: Faces, system: System): FaceOffsets | undefined {
  const beside = faces.edges
    .filter((edge) => hasFace(edge) && runsWith(edge, line) && isWall(edge, faces))
    .sort((a, b) => lengthOf(b) - lengthOf(a) || nearness(a, line) - nearness(b, line));
  for (const edge of beside) {
    const offsets = offsetsFrom(edge, line, faces, system);
    if (offsets) return offsets;
  }
  return undefined;
}

function isWall({ name }: RoomEdge, { walls }: Faces): boolean {
  return walls.has(name);
}

function runsWith({ from, to }: RoomEdge, line: ChalkLine): boolean {
  const [ux, uy] = unitAlong(from, to);
  const [dx, dy] = unitAlong(line.from, line.to);
  return Math.abs(ux * dy - uy * dx) <= MOST_LEAN;
}

function offsetsFrom(edge: RoomEdge, line: ChalkLine, faces: Faces, system: System): FaceOffsets | undefined {
  const [zero] = tapeEnds(edge, edge.from, faces).filter(({ side }) => side < 0);
  const [far] = tapeEnds(edge, edge.to, faces).filter(({ side }) => side > 0);
  const start = zero ? { ...zero, at: edge.from, way: 1 } : far && { ...far, at: edge.to, way: -1 };
  if (!start) return undefined;
  const [ux, uy] = unitAlong(edge.from, edge.to);
  const way = start.way;
  const { unit, inset } = STATIONS[system];
  const footAt = (distance: Ticks): Point => {
    const on = way * (distance - start.distance);
    return [start.at[0] + ux * on, start.at[1] + uy * on];
  };
  const last = start.distance + lengthOf(edge) - inset;
  const first = Math.ceil((start.distance + inset) / unit) * unit;
  const open: { distance: Ticks; offset: Ticks }[] = [];
  for (let distance = first; distance <= last; distance += unit) {
    const offset = offsetAt(footAt(distance), [-uy, ux], line, faces);
    if (offset !== undefined) open.push({ distance, offset });
  }
  const [one, other] = [open[0], open.at(-1)];
  if (!one || !other || other.distance - one.distance < leastApart(system)) return undefined;
  const endOf = ({ distance, offset }: typeof one): Point => {
    const [x, y] = footAt(distance);
    return [x - uy * offset, y + ux * offset];
  };
  return { edge: edge.id, end: start.end, stations: [one, other], ends: [endOf(one), endOf(other)] };
}

/** Places along a face: at whole inches or 10 mm, this far from its ends. */
const STATIONS: Readonly<Record<System, { readonly unit: Ticks; readonly inset: Ticks }>> = {
  inches: { unit: TICKS_PER_INCH, inset: 6 * TICKS_PER_INCH },
  mm: { unit: 10 * TICKS_PER_MM, inset: 150 * TICKS_PER_MM },
};

/** From a foot on a face square to it as far as the line; undefined where the line is not there or something stands between. */
function offsetAt(foot: Point, into: Point, { from, to }: ChalkLine, { floor }: Faces): Ticks | undefined {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const cross = into[0] * dy - into[1] * dx;
  const [fx, fy] = [from[0] - foot[0], from[1] - foot[1]];
  const offset = (fx * dy - fy * dx) / cross;
  const part = (fx * into[1] - fy * into[0]) / cross;
  if (!(offset > 0) || part < 0 || part > 1) return undefined;
  const isOpen = floor.some((shape) =>
    lineThroughShape(shape, foot, into).some((span) => span.from <= ON_FACE && span.to >= offset - ON_FACE),
  );
  return isOpen ? Math.round(offset) : undefined;
}

/** A foot calculated on a slanting face may lie this far off it, in ticks. */
const ON_FACE = 2;

function nearness({ from, to }: RoomEdge, line: ChalkLine): number {
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const [u, v] = [(line.from[0] + line.to[0]) / 2, (line.from[1] + line.to[1]) / 2];
  return Math.hypot(x - u, y - v);
}

function lengthOf({ from, to }: RoomEdge): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
