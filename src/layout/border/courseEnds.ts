import { unitAlong } from '../../geometry/index.ts';
import type { BorderCourse, EdgeFacts } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { BorderSide } from './BorderSide.ts';
import type { CourseDepth } from './courseDepths.ts';
import { type OffsetLine, offsetLine, runOn, whereMeet } from './offsetLine.ts';

/** Where a course along one wall ends: a line, and the gap that tile keeps from it. */
export interface CourseEnd {
  readonly line: OffsetLine;
  readonly id: string;
  readonly facts: EdgeFacts;
}

/** What a border's corners follow from. */
export interface Corners {
  readonly sides: readonly BorderSide[];
  readonly joint: Ticks;
  /** Of all courses. */
  readonly depth: Ticks;
}

/** Facts of a line where one course meets another at a joint, of which `gap` is on this side. */
export function jointFacts(gap: Ticks): EdgeFacts {
  return { meets: 'border', gap, gapMax: gap, touch: false, seen: 'plain' };
}

/**
 * Both ends of a course along wall number `at`. Mitred, the two walls' courses share the joint on the bisector. Butted, each course
 * runs through where its wall begins, and stops a joint before the next one where its wall ends.
 */
export function courseEnds(
  corners: Corners,
  at: number,
  depth: CourseDepth,
  how: BorderCourse['corners'],
): readonly [CourseEnd, CourseEnd] {
  const { sides } = corners;
  const n = sides.length;
  const [before, own, after] = [sides[(at + n - 1) % n]!, sides[at]!, sides[(at + 1) % n]!];
  const half = Math.floor(corners.joint / 2);
  const isButted = (one: BorderSide, other: BorderSide) => how === 'butted' && !isStraight(one, other);
  return [
    isButted(before, own)
      ? through(before, own, depth, corners.joint)
      : mitre(before, own, own, corners.depth, half),
    isButted(own, after)
      ? stopped(after, depth, corners.joint)
      : mitre(own, after, own, corners.depth, corners.joint - half),
  ];
}

function isStraight(one: BorderSide, other: BorderSide): boolean {
  return runOn(offsetLine(one, 0), offsetLine(other, 0));
}

/** The bisector of a corner, from where both outer lines of the border meet to where both inner ones do. */
function mitre(one: BorderSide, other: BorderSide, own: BorderSide, depth: Ticks, gap: Ticks): CourseEnd {
  const meet = (off: Ticks) =>
    whereMeet(offsetLine(one, one.facts.gap + off), offsetLine(other, other.facts.gap + off));
  const at = meet(0);
  return {
    line: { at, along: unitAlong(at, meet(depth)) },
    id: `border:${own.wall}`,
    facts: jointFacts(gap),
  };
}

/** Where a course runs through: to the wall or to the course outside of its own; at a corner that stands in, level with the other's inner edge. */
function through(before: BorderSide, own: BorderSide, depth: CourseDepth, joint: Ticks): CourseEnd {
  const { gap } = before.facts;
  const id = `border:${before.wall}`;
  if (own.standsIn) return { line: offsetLine(before, gap + depth.to), id, facts: jointFacts(0) };
  if (depth.from === 0) return { line: offsetLine(before, 0), id: before.wall, facts: before.facts };
  return { line: offsetLine(before, gap + depth.from - joint), id, facts: jointFacts(joint) };
}

/** Where a course stops: a joint before the inner edge of the one that runs through, or at a corner that stands in before its outer edge. */
function stopped(after: BorderSide, depth: CourseDepth, joint: Ticks): CourseEnd {
  const { gap } = after.facts;
  const off = gap + (after.standsIn ? depth.from : depth.to);
  return { line: offsetLine(after, off), id: `border:${after.wall}`, facts: jointFacts(joint) };
}
