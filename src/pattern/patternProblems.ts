import type { OwnRepeat, PatternSpec, TileSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { printLength, type System, type Ticks } from '../measure/index.ts';
import type { UnitPlace } from './onUnits.ts';
import { ownPlaces } from './ownPlaces.ts';
import type { Pattern } from './Pattern.ts';

type Found = Pick<Problem, 'code' | 'figures'>;

/**
 * Why a pattern cannot be laid with these tiles: sizes that do not close, or places of the owner's own that
 * overlap or leave the repeat open. Joints may widen to twice the joint; what is within is laid, and told.
 */
export function patternProblems(
  { closing, joint }: Pattern,
  spec: PatternSpec,
  tiles: readonly TileSpec[],
  system: System,
): readonly Found[] {
  const placed = spec.own ? ownProblems(spec.own, tiles, joint) : [];
  if (placed.length > 0 || !closing || (closing.most <= 2 * joint && closing.least >= joint - ROUNDING))
    return placed;
  const say = (ticks: Ticks) => printLength(ticks, system);
  const { tile, side, has, needs, most } = closing;
  const figures = { tile, side, has: say(has), needs: say(needs), joint: say(joint), most: say(most) };
  return [{ code: 'patternOpen', figures }];
}

const ROUNDING = 2;

function ownProblems(of: OwnRepeat, tiles: readonly TileSpec[], joint: Ticks): readonly Found[] {
  const places = ownPlaces(
    tiles.filter(({ key }) => of.places.some(({ tile }) => tile === key)),
    joint,
    of,
  );
  const [[ax, ay], [bx, by]] = of.repeat;
  const repeat = Math.abs(ax * by - ay * bx);
  const covered = places.reduce((sum, { size }) => sum + size[0] * size[1], 0);
  const twice = places.flatMap((one, at) =>
    places
      .slice(at)
      .filter((other) => meets(one, other, of.repeat))
      .map((other) => [one, other] as const),
  )[0];
  if (twice) {
    const [one, other] = twice.map(({ at }) => at.join(', '));
    return [{ code: 'ownOverlaps', figures: { one: one!, other: other! } }];
  }
  return Math.abs(covered - repeat) > 1e-6 ? [{ code: 'ownOpen', figures: { covered, repeat } }] : [];
}

/** How many repeats either way are looked at: a tile reaches no further than this. */
const REACH = 12;

/** Whether two places cover the same spot, in this repeat or in another. */
function meets(one: UnitPlace, other: UnitPlace, [a, b]: OwnRepeat['repeat']): boolean {
  for (let i = -REACH; i <= REACH; i++) {
    for (let j = -REACH; j <= REACH; j++) {
      if (one === other && i === 0 && j === 0) continue;
      const off = [0, 1].map((axis) => other.at[axis]! + i * a[axis]! + j * b[axis]! - one.at[axis]!);
      if (off.every((by, axis) => by < one.size[axis]! - 1e-6 && -by < other.size[axis]! - 1e-6)) return true;
    }
  }
  return false;
}
