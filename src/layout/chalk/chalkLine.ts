import type { Point, Span } from '../../geometry/index.ts';
import { distancePointSegment, distanceSegments, lineThroughShape } from '../../geometry/index.ts';
import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import type { ChalkMark } from '../Layout.ts';
import type { Faces } from './Faces.ts';
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
export function jointLine(at: number, axis: 0 | 1, faces: Faces): JointLine {
  const point = (t: number): Point => (axis === 0 ? [at, Math.round(t)] : [Math.round(t), at]);
  const spans: Span[] = faces.floor.flatMap((shape) =>
    lineThroughShape(shape, point(0), axis === 0 ? [0, 1] : [1, 0]),
  );
  const stretches = spans.map(({ from, to }): Stretch => {
    const ends = [point(from), point(to)] as const;
    const marks = ends.flatMap((end) => markAt(end, faces));
    return { from: ends[0], to: ends[1], marks };
  });
  return { at, stretches };
}

/** Marks nearer together than this do not give a line its direction: 24 in or 600 mm; common practice, no source. */
export function leastApart(system: System): Ticks {
  return system === 'inches' ? 24 * TICKS_PER_INCH : 600 * TICKS_PER_MM;
}

/** Distance between the marks of a stretch; 0 where there are not two of them. */
export function apartOf({ marks, from, to }: Stretch): number {
  return marks.length < 2 ? 0 : distanceSegments(from, from, to, to);
}

/** How near, in ticks, a line's rounded end lies to the face it hits. */
const ON_FACE = 2;

/** The mark at the end of a line, where a tape reaches the face there. */
export function markAt(end: Point, faces: Faces): ChalkMark[] {
  const hit = faces.edges.find(({ from, to }) => distancePointSegment(end, from, to) <= ON_FACE);
  const mark = hit && markOn(hit, end, faces);
  return mark ? [mark] : [];
}
