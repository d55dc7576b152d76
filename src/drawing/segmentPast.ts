import { type Box, grow } from './boxes.ts';
import type { Spot } from './Mark.ts';
import { clipSegment } from './template/clipSegment.ts';

/** Shorter ends of a broken line are left out, in mm. */
const shortest = 0.3;

/**
 * What is left of a segment that is broken where it would run over boxes, `apart` mm off each, in its own order.
 *
 * @example segmentPast([0, 5], [20, 5], [{ left: 5, bottom: 0, right: 10, top: 10 }], 1) //=> [[[0, 5], [4, 5]], [[11, 5], [20, 5]]]
 */
export function segmentPast(
  a: Spot,
  b: Spot,
  boxes: readonly Box[],
  apart: number,
): readonly (readonly [Spot, Spot])[] {
  return boxes.reduce<readonly (readonly [Spot, Spot])[]>(
    (parts, box) =>
      parts.flatMap(([from, to]) => {
        const over = clipSegment(from, to, grow(box, apart));
        if (!over) return [[from, to]];
        const left: readonly (readonly [Spot, Spot])[] = [
          [from, over[0]],
          [over[1], to],
        ];
        return left.filter(([one, other]) => Math.hypot(other[0] - one[0], other[1] - one[1]) > shortest);
      }),
    [[a, b]],
  );
}
