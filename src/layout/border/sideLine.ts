import type { Point, Ring } from '../../geometry/index.ts';
import type { TileSpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomInFrame } from '../frame/frameRoom.ts';
import type { BorderSide } from './BorderSide.ts';
import type { StripLine } from './layCourse.ts';
import { type OffsetLine, offsetLine } from './offsetLine.ts';

/** The line of a course's inner edge along a wall; its middle is half way between the ends, each in the middle of the course. */
export function sideLine(side: BorderSide, depth: Ticks, [a, b, c, d]: Ring): StripLine {
  const line = offsetLine(side, depth);
  const [begin, end] = [placeOn(line, a!) + placeOn(line, d!), placeOn(line, b!) + placeOn(line, c!)];
  const all = [a!, b!, c!, d!].map((point) => placeOn(line, point));
  return {
    from: line.at,
    to: ahead(line),
    reach: [Math.floor(Math.min(...all)), Math.ceil(Math.max(...all))],
    span: [begin / 2, end / 2],
    rows: 1,
  };
}

/** The line in a doorway behind the border, and as many rows as reach to the door line. */
export function doorwayLine(
  side: BorderSide,
  { field }: RoomInFrame,
  tile: Pick<TileSpec, 'width'>,
  joint: Ticks,
): StripLine {
  const line = offsetLine(side, side.facts.gap - joint);
  const points = field.flatMap(({ outer }) => outer);
  const all = points.map((point) => placeOn(line, point));
  const deep = Math.max(...points.map((point) => behind(line, point)));
  const reach = [Math.floor(Math.min(...all)), Math.ceil(Math.max(...all))] as const;
  return {
    from: line.at,
    to: ahead(line),
    reach,
    span: reach,
    rows: Math.max(1, Math.ceil((deep - 1) / (tile.width + joint))),
  };
}

/** Far enough for the direction to be exact. */
const FAR = 1e7;

function ahead({ at, along }: OffsetLine): Point {
  return [at[0] + FAR * along[0], at[1] + FAR * along[1]];
}

function placeOn({ at, along }: OffsetLine, [x, y]: Point): number {
  return (x - at[0]) * along[0] + (y - at[1]) * along[1];
}

/** How far a point lies on the right of a line. */
function behind({ at, along }: OffsetLine, [x, y]: Point): number {
  return (x - at[0]) * along[1] - (y - at[1]) * along[0];
}
