import type { Point, Ring, Shape } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Step } from './Mark.ts';
import { lengthOn, type Scale, toPaper } from './Scale.ts';

/** A true circle in the data, kept so that it is drawn by an arc and not as the polygon that stands for it. */
export interface TrueCircle {
  readonly centre: Point;
  readonly radius: Ticks;
}

/** Corners of the polygon that stands for a circle lie off it by a few ticks. */
const onCircle = 8;

function isOn(point: Point, { centre, radius }: TrueCircle): boolean {
  return Math.abs(Math.hypot(point[0] - centre[0], point[1] - centre[1]) - radius) <= onCircle;
}

/** The circle that an edge follows, if any: both its ends and its middle lie on it. */
export function circleOf(a: Point, b: Point, circles: readonly TrueCircle[]): TrueCircle | undefined {
  return circles.find(
    (circle) => isOn(a, circle) && isOn(b, circle) && isOn([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], circle),
  );
}

/** The arc from a to b on the paper, the short way round. */
export function arcStep(scale: Scale, a: Point, b: Point, circle: TrueCircle): Step {
  const centre = toPaper(scale, circle.centre);
  const angle = (point: Point) => {
    const [x, y] = toPaper(scale, point);
    return Math.atan2(y - centre[1], x - centre[0]);
  };
  const from = angle(a);
  const sweep = Math.atan2(Math.sin(angle(b) - from), Math.cos(angle(b) - from));
  return { centre, radius: lengthOn(scale, circle.radius), from, to: from + sweep };
}

/** A ring on the paper; edges that follow a true circle become arcs. */
export function ringOn(scale: Scale, ring: Ring, circles: readonly TrueCircle[] = []): readonly Step[] {
  const first: Step[] = ring.slice(0, 1).map((point) => toPaper(scale, point));
  const rest = ring.map((a, i): Step => {
    const b = ring[(i + 1) % ring.length]!;
    const circle = circleOf(a, b, circles);
    return circle ? arcStep(scale, a, b, circle) : toPaper(scale, b);
  });
  return [...first, ...rest];
}

/** All rings of a shape on the paper. */
export function shapeOn(
  scale: Scale,
  shape: Shape,
  circles: readonly TrueCircle[] = [],
): readonly (readonly Step[])[] {
  return [shape.outer, ...shape.holes].map((ring) => ringOn(scale, ring, circles));
}
