import { bounds, lineThroughShape, type Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { modulesInReach, REACH } from '../../trade/index.ts';
import type { Chalk, ChalkLine } from '../Layout.ts';
import { apartOf, leastApart, markAt, type Stretch } from './chalkLine.ts';
import type { Faces } from './Faces.ts';
import type { FurtherQuestion } from './FurtherQuestion.ts';
import { isBeside, roomBeside } from './isBeside.ts';
import { zigzagNear } from './zigzagNear.ts';

export interface CornerQuestion extends FurtherQuestion {
  readonly origin: Point;
  /** Middle of the longest run each way. */
  readonly middle: Point;
}

/** Lines that corners of tiles stand on, and how they lie to each other and to the tiles; ticks. */
export interface CornerLines {
  readonly lines: readonly Omit<ChalkLine, 'name'>[];
  readonly corners?: NonNullable<Chalk['corners']>;
}

/**
 * Where tiles lie in zigzag: the axis of one nearest the middle, on which a corner of the first tile of each
 * repeat stands, and parallels at so many repeats as a reach holds. None for a pattern without such a direction.
 */
export function cornerLines(question: CornerQuestion): CornerLines {
  const { pattern, origin, middle, frame, faces, system } = question;
  const way = pattern.cornersAlong;
  if (!way) return { lines: [] };
  const { a, b, module } = pattern;
  const long = Math.hypot(...way);
  const offOf = ([x, y]: Point) => (way[0] * y - way[1] * x) / long;
  const width = Math.abs(offOf(b));
  const every = modulesInReach(width, REACH.value[system]);
  const axis = zigzagNear(pattern, origin, middle)!;
  const { minX, minY, maxX, maxY } = bounds(frame.outline);
  const most = Math.ceil(Math.hypot(maxX - minX, maxY - minY) / (every * width));
  const order = [0, ...Array.from({ length: most }, (_, n) => [n + 1, -n - 1]).flat()];
  const near = roomBeside(Math.min(...module), system);
  const lines = order
    .map((n) => n * every)
    .flatMap((n) => stretchesOf([axis[0] + n * b[0], axis[1] + n * b[1]], way, faces))
    .filter((stretch) => apartOf(stretch) >= leastApart(system) && !isBeside(stretch, faces, near))
    .map((stretch) => ({ ...stretch, snappable: true }));
  const [apart, step]: [Ticks, Ticks] = [Math.round(every * width), Math.round(Math.hypot(...a))];
  return { lines, corners: { apart, every: step } };
}

/** The stretches of a line through a point over a floor, face to face. */
function stretchesOf(at: Point, way: Point, faces: Faces): Stretch[] {
  const point = (t: number): Point => [Math.round(at[0] + t * way[0]), Math.round(at[1] + t * way[1])];
  const spans = faces.floor.flatMap((shape) => lineThroughShape(shape, at, way));
  return spans.map(({ from, to }) => {
    const ends = [point(from), point(to)] as const;
    return { from: ends[0], to: ends[1], marks: ends.flatMap((end) => markAt(end, faces)) };
  });
}
