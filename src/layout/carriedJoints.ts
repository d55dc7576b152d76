import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';
import { jointsOn } from './chalk/jointsOn.ts';
import type { Layout } from './Layout.ts';
import { drawnTogether } from './movement/drawnTogether.ts';

/** A joint of the base, or a crack that moves, and the straight joint of the tile that can take it up. */
export interface CarriedJoint {
  /** Its place among what was found on this floor, from 1: cracks, then hollow spots, then joints. */
  readonly number: number;
  /** A tile joint lies over it; one lies beside it; none runs along it within half a tile. */
  readonly kind: 'over' | 'beside' | 'none';
  /** The tile joint: its axis, and how many joints and how far from the chalk line of that axis, with a sign. */
  readonly axis?: 'along' | 'across';
  readonly steps?: number;
  readonly distance?: Ticks;
  /** How far it lies off the middle of that joint where that is most. */
  readonly away?: Ticks;
}

/**
 * Which tile joint is nearest to each joint of the base and each moving crack, both given in the pattern's frame. A line that
 * strays across the axis by more than half a module has none: it does not run along the joints.
 */
export function carriedJoints(
  layout: Pick<Layout, 'frame' | 'pattern' | 'origin' | 'wide' | 'chalk'>,
  base: PlacedBase,
): readonly CarriedJoint[] {
  const before = base.cracks.length + base.hollow.length;
  return [
    ...base.cracks.flatMap(({ moving, line }, i) => (moving ? [carriedBy(layout, line, i + 1)] : [])),
    ...base.joints.map(({ from, to }, i) => carriedBy(layout, [from, to], before + i + 1)),
  ];
}

function carriedBy(
  layout: Parameters<typeof carriedJoints>[0],
  line: readonly Point[],
  number: number,
): CarriedJoint {
  const { pattern, wide = [] } = layout;
  const axes = ([0, 1] as const).filter((axis) => (axis === 0 ? pattern.straightX : pattern.straightY));
  const near = axes
    .flatMap((axis) => nearestOn(layout, line, axis))
    .reduce<Nearest | undefined>((best, one) => (best && best.away <= one.away ? best : one), undefined);
  if (!near) return { number, kind: 'none' };
  const { axis, at, away } = near;
  const crossing = layout.chalk.crossing[axis];
  const [from, to] = [crossing, at].map((one) => drawnTogether(wide, axis, one)) as [Ticks, Ticks];
  const extra = wide.find((one) => one.axis === axis && one.at === to)?.extra ?? 0;
  return {
    number,
    kind: away <= (pattern.joint + extra) / 2 ? 'over' : 'beside',
    axis: axis === 0 ? 'along' : 'across',
    steps: Math.round((to - from) / pattern.module[axis]),
    distance: at - crossing,
    away,
  };
}

interface Nearest {
  readonly axis: 0 | 1;
  readonly at: Ticks;
  readonly away: Ticks;
}

function nearestOn(
  { frame, pattern, origin, wide }: Parameters<typeof carriedJoints>[0],
  line: readonly Point[],
  axis: 0 | 1,
): Nearest[] {
  const spread = (on: 0 | 1) => {
    const values = line.map((point) => point[on]);
    return [Math.min(...values), Math.max(...values)] as const;
  };
  const [low, high] = spread(axis);
  const [from, to] = spread(axis === 0 ? 1 : 0);
  if (high - low > pattern.module[axis] / 2 || high - low >= to - from) return [];
  const joints = jointsOn(axis, frame, pattern, origin, wide);
  if (joints.length === 0) return [];
  const off = (joint: Ticks) => Math.max(Math.abs(low - joint), Math.abs(high - joint));
  const at = joints.reduce((best, joint) => (off(joint) < off(best) ? joint : best));
  return [{ axis, at, away: Math.ceil(off(at)) }];
}
