import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import { boxOf } from './boxes.ts';
import type { Spot } from './Mark.ts';

/** Ticks of a millimetre. */
const ticksPerMm = 320;

/** How ticks become paper: turned about the frame's origin, moved so that `origin` falls on `spot`, reduced by `ratio`. */
export interface Scale {
  /** 12 for 1:12. */
  readonly ratio: number;
  readonly paperMmPerTick: number;
  /** Degrees counter-clockwise from the data's frame to the paper. */
  readonly turn: number;
  /** A point in ticks after turning, and where on the paper it falls. */
  readonly origin: Point;
  readonly spot: Spot;
}

/** Cosine and sine of the quarter turns. */
const quarters = [[1, 0], [0, 1], [-1, 0], [0, -1]] as const; // biome-ignore format: four quarters on a line

/** Cosine and sine of an angle in degrees, exact for quarter turns. */
export function direction(degrees: number): readonly [cos: number, sin: number] {
  const quarter = (((degrees % 360) + 360) % 360) / 90;
  const radians = (degrees * Math.PI) / 180;
  return quarters[quarter] ?? [Math.cos(radians), Math.sin(radians)];
}

function turned([x, y]: Point, degrees: number): Point {
  const [cos, sin] = direction(degrees);
  return [x * cos - y * sin, x * sin + y * cos];
}

/** Millimetres of paper for a tick at 1:ratio. */
export function mmPerTick(ratio: number): number {
  return 1 / (ticksPerMm * ratio);
}

/** Width and height in ticks of points after turning, and their lower left corner. */
export function extent(points: readonly Point[], turn: number) {
  const box = boxOf(points.map((point) => turned(point, turn)));
  return {
    width: box.right - box.left,
    height: box.top - box.bottom,
    lowerLeft: [box.left, box.bottom] as Point,
  };
}

/** A scale at which the lower left of the points, once turned, falls on `spot`. */
export function scaleFor(points: readonly Point[], turn: number, ratio: number, spot: Spot): Scale {
  return { ratio, paperMmPerTick: mmPerTick(ratio), turn, origin: extent(points, turn).lowerLeft, spot };
}

/**
 * Where a point in ticks falls on the paper.
 *
 * @example toPaper({ ratio: 10, paperMmPerTick: 1 / 3200, turn: 90, origin: [0, 0], spot: [5, 5] }, [3200, 0]) //=> [5, 6]
 */
export function toPaper(scale: Scale, point: Point): Spot {
  const [x, y] = turned(point, scale.turn);
  return [
    scale.spot[0] + (x - scale.origin[0]) * scale.paperMmPerTick,
    scale.spot[1] + (y - scale.origin[1]) * scale.paperMmPerTick,
  ];
}

/** A length in ticks as mm of paper. */
export function lengthOn(scale: Scale, ticks: Ticks): number {
  return ticks * scale.paperMmPerTick;
}
