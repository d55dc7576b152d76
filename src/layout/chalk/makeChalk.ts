import { distanceSegments, type Point, type Shape, subtract } from '../../geometry/index.ts';
import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Chalk, ChalkLine, FramedRoom } from '../Layout.ts';
import { type JointLine, jointLine, type Stretch } from './chalkLine.ts';
import { jointsOn } from './jointsOn.ts';
import { squareCheck } from './squareCheck.ts';

/** What the chalk lines are chosen by. */
export interface ChalkQuestion {
  readonly frame: FramedRoom;
  /** Names of the room's corners, by their coordinates in the frame. */
  readonly corners: ReadonlyMap<string, string>;
  readonly pattern: Pattern;
  readonly origin: Point;
  /** Middle of the longest run each way. */
  readonly middle: Point;
  readonly system: System;
}

/** Marks nearer together than this do not give a line its direction: 24 in or 600 mm; common practice, no source. */
export function leastApart(system: System): Ticks {
  return system === 'inches' ? 24 * TICKS_PER_INCH : 600 * TICKS_PER_MM;
}

/**
 * One chalk line each way on a joint: the pair nearest the middle of the longest runs that cross on open
 * floor, both with two marks that a tape can reach, if there are such. The first piece is named later.
 */
export function makeChalk(question: ChalkQuestion): Omit<Chalk, 'firstPiece'> {
  const { frame, corners, pattern, origin, middle, system } = question;
  const floor = openFloor(frame);
  const edges = [...frame.edges, ...frame.obstacles.flatMap((one) => one.edges)];
  const upright = jointsOn(0, frame, pattern, courseOrigin(question)).map((at) =>
    jointLine(at, 0, floor, edges, corners),
  );
  const level = jointsOn(1, frame, pattern, origin).map((at) => jointLine(at, 1, floor, edges, corners));
  const apart = leastApart(system);
  const best = bestCrossing(upright, level, middle, apart);
  if (!best) return { crossing: middle, lines: [], check: { legs: [0, 0], diagonal: 0 } };
  const { crossing, stretches } = best;
  const lines = stretches.map((stretch, i): ChalkLine => {
    return { name: `${i + 1}`, ...stretch, snappable: isSnappable(stretch, apart) };
  });
  return { crossing, lines, check: squareCheck(crossing, stretches, floor, system) };
}

/** Where a course's joints count from: of courses that step by a length, the one at the middle of the room. */
function courseOrigin({ pattern: { b }, origin, middle }: ChalkQuestion): Point {
  const course = b[0] === 0 ? 0 : Math.round((middle[1] - origin[1]) / b[1]);
  return [origin[0] + course * b[0], origin[1] + course * b[1]];
}

function openFloor({ outline, obstacles }: FramedRoom): Shape[] {
  return subtract(
    [{ outer: outline, holes: [] }],
    obstacles.map(({ ring }) => ({ outer: ring, holes: [] })),
  );
}

interface Crossing {
  readonly crossing: Point;
  readonly stretches: readonly [Stretch, Stretch];
  readonly unmarked: number;
  readonly off: number;
}

function bestCrossing(
  upright: readonly JointLine[],
  level: readonly JointLine[],
  middle: Point,
  apart: Ticks,
): Crossing | undefined {
  let best: Crossing | undefined;
  for (const one of upright) {
    for (const other of level) {
      const crossing: Point = [one.at, other.at];
      const along = one.stretches.find(({ from, to }) => from[1] < other.at && other.at < to[1]);
      const across = other.stretches.find(({ from, to }) => from[0] < one.at && one.at < to[0]);
      if (!along || !across) continue;
      const unmarked = [along, across].filter((stretch) => !isSnappable(stretch, apart)).length;
      const off = Math.abs(one.at - middle[0]) + Math.abs(other.at - middle[1]);
      if (!best || unmarked < best.unmarked || (unmarked === best.unmarked && off < best.off))
        best = { crossing, stretches: [along, across], unmarked, off };
    }
  }
  return best;
}

function isSnappable({ marks, from, to }: Stretch, apart: Ticks): boolean {
  return marks.length >= 2 && distanceSegments(from, from, to, to) >= apart;
}
