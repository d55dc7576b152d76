import { bounds, unitAlong } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { movedLeft } from '../border/offsetLine.ts';
import type { Layout } from '../Layout.ts';

/** A course runs along a soft joint and not across it where it goes less than this with the axis: half a right angle is across. */
const ACROSS = 0.5;

/** From where to where on an axis a soft joint would run along the courses of a border, with the joint round them, in ticks. */
export function alongCourses(
  { border, pattern }: Pick<Layout, 'border' | 'pattern'>,
  axis: 0 | 1,
): readonly (readonly [Ticks, Ticks])[] {
  return (border?.lines ?? []).flatMap(({ from, to, off }) => {
    const along = unitAlong(from, to);
    if (Math.abs(along[axis]) >= ACROSS) return [];
    const box = bounds([from, to, movedLeft(from, along, -off), movedLeft(to, along, -off)]);
    const [low, high] = axis === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY];
    return [[low - pattern.joint, high + pattern.joint] as const];
  });
}
