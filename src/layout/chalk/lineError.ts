import type { Point } from '../../geometry/index.ts';
import { type System, sawNearest, TICKS_PER_FOOT, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import { boundOf, READING_ERROR, type Spread, squareSpread, turnSpread } from '../../trade/index.ts';
import type { Chalk, ChalkLine, ChalkMark } from '../Layout.ts';
import type { Faces } from './Faces.ts';
import type { FaceOffsets } from './faceOffsets.ts';

/** What an error rests on: how marks are printed and read. */
export interface Reading {
  readonly system: System;
  /** Step to which running distances are printed. */
  readonly step: Ticks;
}

/** Length over which the turn of a line is told: 10 ft or 3 m. */
export function turnOver(system: System): Ticks {
  return system === 'inches' ? 10 * TICKS_PER_FOOT : 3000 * TICKS_PER_MM;
}

/**
 * How far a line through two marks may lie off its place from face to face, and turn. What printing rounds
 * off is known; the reading spreads. Square to the line counts, so a mark on a slanting face counts less.
 */
export function lineError(line: ChalkLine, faces: Faces, { system, step }: Reading): ChalkLine['error'] {
  const [one, other] = line.marks.map((mark) => markError(mark, line, faces, system, step));
  if (!one || !other) return undefined;
  const over = turnOver(system);
  const apart = lengthOf(line);
  const turn = {
    bias: ((one.bias - other.bias) * over) / apart,
    sd: turnSpread([one.sd, other.sd], apart, over),
  };
  return { off: Math.ceil(boundOf([one, other])), turn: Math.ceil(boundOf([turn])), over };
}

/** As `lineError`, for a line that is squared off another by the check of the crossing; read from that line. */
export function squaredError(
  line: ChalkLine,
  other: ChalkLine,
  { crossing, check }: Pick<Chalk, 'crossing' | 'check'>,
  { system }: Reading,
): ChalkLine['error'] {
  if (check.diagonal === 0 || !other.error) return undefined;
  const reading = READING_ERROR.value[system];
  const { over } = other.error;
  const sd = Math.hypot(
    squareSpread(check.legs, reading, over),
    turnSpread([reading, reading], lengthOf(other), over),
  );
  const arm = Math.max(far(line.from, crossing), far(line.to, crossing));
  // The crossing is marked on the other line, and its printed distance is rounded: both move the line as a whole.
  const off = boundOf([{ bias: 0, sd: Math.hypot(reading, (sd * arm) / over) }]);
  return { off: Math.ceil(off), turn: Math.ceil(boundOf([{ bias: 0, sd }])), over };
}

/**
 * As `lineError`, for a line through two marks measured square off a face beside it. The marks stand inside the ends of the line, so
 * that it is farther off there than at them.
 */
export function offsetsError(
  { from, to }: Pick<ChalkLine, 'from' | 'to'>,
  { stations, ends: [one, other] }: Pick<FaceOffsets, 'stations' | 'ends'>,
  { system, step }: Reading,
): NonNullable<ChalkLine['error']> {
  const reading = READING_ERROR.value[system];
  const biases = stations.map(({ offset }) => sawNearest(offset, step) - offset) as [number, number];
  const apart = far(one, other);
  const [ux, uy] = [(other[0] - one[0]) / apart, (other[1] - one[1]) / apart];
  const spreadAt = ([x, y]: Point): Spread => {
    const on = ((x - one[0]) * ux + (y - one[1]) * uy) / apart;
    return { bias: (1 - on) * biases[0] + on * biases[1], sd: reading * Math.hypot(1 - on, on) };
  };
  const over = turnOver(system);
  const turn = {
    bias: ((biases[1] - biases[0]) * over) / apart,
    sd: turnSpread([reading, reading], apart, over),
  };
  return {
    off: Math.ceil(boundOf([spreadAt(from), spreadAt(to)])),
    turn: Math.ceil(boundOf([turn])),
    over,
  };
}

/** The error of a mark square to its line; rounded off to the left of the line is positive. */
function markError(mark: ChalkMark, line: ChalkLine, { edges }: Faces, system: System, step: Ticks): Spread {
  const edge = edges.find(({ id }) => id === mark.edge)!;
  const [dx, dy] = [
    (line.to[0] - line.from[0]) / lengthOf(line),
    (line.to[1] - line.from[1]) / lengthOf(line),
  ];
  const [ex, ey] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  const square = (dx * ey - dy * ex) / Math.hypot(ex, ey);
  const rounded = sawNearest(mark.distance, step) - mark.distance;
  return { bias: wayOf(mark, edge) * square * rounded, sd: Math.abs(square) * READING_ERROR.value[system] };
}

/** 1 where a mark is read the way its edge is walked, -1 where it is read against it. */
function wayOf({ both, end, distance, at }: ChalkMark, { to }: RoomEdge): 1 | -1 {
  const last = both
    ? both[1].end === end && both[1].distance === distance
    : Math.abs(far(at, to) - distance) <= 2;
  return last ? -1 : 1;
}

function lengthOf({ from, to }: Pick<ChalkLine, 'from' | 'to'>): number {
  return far(from, to);
}

function far(p: Point, q: Point): number {
  return Math.hypot(p[0] - q[0], p[1] - q[1]);
}
