import { lineThroughShape, type Point, type Shape } from '../geometry/index.ts';
import type { CarriedJoint } from '../layout/carriedJoints.ts';
import type { Layout } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';

/** How much joint the floor has over what moves in its base. Ticks. */
export interface CarriedRun {
  readonly surface: string;
  /** Whether a tile joint lies over it, which then takes sealant; else what is done there is still to be decided. */
  readonly isOver: boolean;
  readonly width: Ticks;
  readonly length: number;
}

/**
 * The length of each joint of the base and each moving crack under the field, both in the pattern's frame: where a tile joint lies
 * over it, of that joint from edge to edge. Those that are among the floor's movement joints already are left out.
 */
export function carriedRuns(
  layout: Pick<Layout, 'surface' | 'field' | 'pattern' | 'movement' | 'chalk'>,
  base: PlacedBase,
  carried: readonly CarriedJoint[],
): readonly CarriedRun[] {
  const { surface, pattern } = layout;
  const width = pattern.joint;
  return carried.flatMap((one): CarriedRun[] => {
    if (one.kind === 'over') {
      const axis = one.axis === 'along' ? 0 : 1;
      const at = layout.chalk.crossing[axis] + one.distance!;
      const lines = layout.movement?.lines ?? [];
      if (lines.some((line) => line.axis === one.axis && Math.abs(line.at - at) <= 1)) return [];
      return [{ surface, isOver: true, width, length: through(layout.field, axis, at) }];
    }
    const line = lineOf(base, one.number);
    const sides = line.slice(1).map((to, i) => within(layout.field, line[i]!, to, [0, 1]));
    return [{ surface, isOver: false, width, length: sides.reduce((sum, length) => sum + length, 0) }];
  });
}

/** The line that bears this number on the base: cracks, then hollow spots, then joints. */
function lineOf({ cracks, hollow, joints }: PlacedBase, number: number): readonly Point[] {
  const crack = cracks[number - 1];
  if (crack) return crack.line;
  const joint = joints[number - 1 - cracks.length - hollow.length];
  return joint ? [joint.from, joint.to] : [];
}

/** Length of the joint at this place of an axis, from edge to edge of the field. */
function through(field: readonly Shape[], axis: 0 | 1, at: Ticks): number {
  const point = (off: number): Point => (axis === 0 ? [at, off] : [off, at]);
  return within(field, point(0), point(1), [-Infinity, Infinity]);
}

/** Length of a line inside a field between two places on it, as parts of the way from one point to the other. */
function within(
  field: readonly Shape[],
  from: Point,
  to: Point,
  [least, most]: readonly [number, number],
): number {
  const dir: Point = [to[0] - from[0], to[1] - from[1]];
  const spans = field.flatMap((shape) => lineThroughShape(shape, from, dir));
  const parts = spans.map((span) => Math.max(0, Math.min(span.to, most) - Math.max(span.from, least)));
  return parts.reduce((sum, part) => sum + part, 0) * Math.hypot(dir[0], dir[1]);
}
