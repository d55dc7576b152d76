import type { Cut } from '../cuts/Cut.ts';
import type { Point } from '../geometry/index.ts';
import { type Box, boxOf } from './boxes.ts';
import { circleOf } from './trueCircle.ts';

/** A step or a bite of a piece: the box round it, and how small it is, in ticks. */
export interface Feature {
  readonly box: Box;
  readonly size: number;
}

/** Straight edges that are sawn: the sides of steps and notches. */
function steps({ edges, circles }: Cut): readonly Feature[] {
  return edges
    .filter(({ from, to, factory, via }) => !factory && !via && !circleOf(from, to, circles))
    .map(({ from, to }) => ({ box: boxOf([from, to]), size: Math.hypot(to[0] - from[0], to[1] - from[1]) }));
}

/** What a circle bites out of the outline: its arcs there, and how deep it goes. */
function bites({ shape, circles }: Cut): readonly Feature[] {
  return circles.flatMap((circle) => {
    const on = shape.outer.flatMap((a, i): readonly Point[] => {
      const b = shape.outer[(i + 1) % shape.outer.length]!;
      return circleOf(a, b, [circle]) ? [a, b] : [];
    });
    if (on.length === 0) return [];
    const box = boxOf(on);
    return [{ box, size: Math.min(box.right - box.left, box.top - box.bottom) }];
  });
}

/** The smallest step or bite of a cut that is under `least` ticks; undefined where all are larger. */
export function smallFeature(cut: Cut, least: number): Feature | undefined {
  return [...steps(cut), ...bites(cut)]
    .filter(({ size }) => size > 0 && size < least)
    .sort((a, b) => a.size - b.size)[0];
}
