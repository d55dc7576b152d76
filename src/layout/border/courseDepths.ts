import type { Ticks } from '../../measure/index.ts';

/** A course as it stands on each wall: from where to where, counted square off the line at the wall's gap. */
export interface CourseDepth {
  readonly from: Ticks;
  readonly to: Ticks;
}

/**
 * Where the courses of a border stand, from the wall inwards, with a joint between every two.
 *
 * @example courseDepths([100, 50], 3) //=> [{ from: 0, to: 100 }, { from: 103, to: 153 }]
 */
export function courseDepths(widths: readonly Ticks[], joint: Ticks): readonly CourseDepth[] {
  let from = 0;
  return widths.map((width) => {
    const depth = { from, to: from + width };
    from = depth.to + joint;
    return depth;
  });
}
