import type { Point } from '../geometry/index.ts';
import type { LineOffset, Observation } from './observations.ts';

/** A snapped line in the room: its zero, the direction it runs in, and on which side offsets count as positive. */
export interface BaseLine {
  readonly origin: Point;
  /** Radians, counter-clockwise from the room's first wall. */
  readonly turn: number;
  /** 1: offsets are positive to the left of the line. */
  readonly hand: 1 | -1;
}

/** A corner as the line sees it: along, off. */
export function seenFrom({ origin, turn, hand }: BaseLine, [x, y]: Point): Point {
  const [dx, dy] = [x - origin[0], y - origin[1]];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [c * dx + s * dy, hand * (c * dy - s * dx)];
}

const isOffset = (one: Observation): one is LineOffset => one.kind === 'baseLine';

/** Corners that have been read both along the line and off it, by number. */
export function linePlaces(seen: readonly Observation[]): ReadonlyMap<number, Point> {
  const offsets = seen.filter(isOffset);
  const along = offsets.filter(({ axis }) => axis === 'along');
  return new Map(
    along.flatMap(({ corner, mean }) => {
      const off = offsets.find((one) => one.corner === corner && one.axis === 'off');
      return off ? [[corner, [mean, off.mean] as const]] : [];
    }),
  );
}

const middle = (points: readonly Point[]): Point => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
];

function lineOfHand(pairs: readonly (readonly [room: Point, seen: Point])[], hand: 1 | -1): BaseLine {
  const room = pairs.map(([point]) => point);
  const line = pairs.map(([, [along, off]]): Point => [along, hand * off]);
  const [p, q] = [middle(room), middle(line)];
  let [across, straight] = [0, 0];
  for (const [i, [x, y]] of room.entries()) {
    const [u, v] = [line[i]![0] - q[0], line[i]![1] - q[1]];
    straight += u * (x - p[0]) + v * (y - p[1]);
    across += u * (y - p[1]) - v * (x - p[0]);
  }
  const turn = Math.atan2(across, straight);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return { origin: [p[0] - c * q[0] + s * q[1], p[1] - s * q[0] - c * q[1]], turn, hand };
}

/**
 * The line that fits best to where corners stand and where they were read from it, offsets to either side; undefined where no
 * corner was read from a line.
 */
export function fitBaseLine(corners: readonly Point[], seen: readonly Observation[]): BaseLine | undefined {
  const pairs = [...linePlaces(seen)].map(([corner, place]) => [corners[corner]!, place] as const);
  if (pairs.length === 0) return undefined;
  const miss = (line: BaseLine) =>
    pairs.reduce((sum, [corner, [along, off]]) => {
      const [u, v] = seenFrom(line, corner);
      return sum + (u - along) ** 2 + (v - off) ** 2;
    }, 0);
  const [left, right] = [lineOfHand(pairs, 1), lineOfHand(pairs, -1)];
  return miss(right) < miss(left) ? right : left;
}
