import type { Point, Shape, Span } from '../../geometry/index.ts';
import { distancePointSegment, lineThroughShape } from '../../geometry/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { ChalkMark } from '../Layout.ts';
import { markOn } from './markOn.ts';

/** One stretch of a possible chalk line, face to face, along an axis. */
export interface Stretch {
  readonly from: Point;
  readonly to: Point;
  readonly marks: readonly ChalkMark[];
}

/** A straight joint that a chalk line may lie on, with its stretches from face to face. */
export interface JointLine {
  /** Where it lies on the axis square to it. */
  readonly at: number;
  readonly stretches: readonly Stretch[];
}

/** The stretches of the line x = at (axis 0) or y = at (axis 1) over a floor without its obstacles. */
export function jointLine(
  at: number,
  axis: 0 | 1,
  floor: readonly Shape[],
  edges: readonly RoomEdge[],
  corners: ReadonlyMap<string, string>,
): JointLine {
  const point = (t: number): Point => (axis === 0 ? [at, Math.round(t)] : [Math.round(t), at]);
  const spans: Span[] = floor.flatMap((shape) =>
    lineThroughShape(shape, point(0), axis === 0 ? [0, 1] : [1, 0]),
  );
  const stretches = spans.map(({ from, to }): Stretch => {
    const ends = [point(from), point(to)] as const;
    const marks = ends.flatMap((end) => markAt(end, edges, corners));
    return { from: ends[0], to: ends[1], marks };
  });
  return { at, stretches };
}

/** How near, in ticks, a line's rounded end lies to the face it hits. */
const ON_FACE = 2;

function markAt(end: Point, edges: readonly RoomEdge[], corners: ReadonlyMap<string, string>): ChalkMark[] {
  const hit = edges.find(({ from, to }) => distancePointSegment(end, from, to) <= ON_FACE);
  const mark = hit && markOn(hit, end, edges, corners);
  return mark ? [mark] : [];
}
