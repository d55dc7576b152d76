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
 * runs through at one end, where its wall begins if that is the right one as you face it, and stops a joint before its neighbor at
 * the other.
 */
export function courseEnds(
  corners: Corners,
  at: number,
  depth: CourseDepth,
  { corners: how, through: hand }: Pick<BorderCourse, 'corners' | 'through'>,
): readonly [CourseEnd, CourseEnd] {
  const { sides } = corners;
  const n = sides.length;
  const [before, own, after] = [sides[(at + n - 1) % n]!, sides[at]!, sides[(at + 1) % n]!];
  const half = Math.floor(corners.joint / 2);
  const isButted = (one: BorderSide, other: BorderSide) => how === 'butted' && !isStraight(one, other);
  // The room is on the left of its walls, so whoever faces one has its begin on the right.
  const [atBegin, atEnd] = hand === 'left' ? [stopped, through] : [through, stopped];
  return [
    isButted(before, own)
      ? atBegin({ side: before, standsIn: own.standsIn }, depth, corners.joint)
      : mitre(before, own, own, corners.depth, half),
    isButted(own, after)
      ? atEnd({ side: after, standsIn: after.standsIn }, depth, corners.joint)
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

/** The side that a course meets at a corner, and whether the room has more than half a turn there. */
interface Neighbor {
  readonly side: BorderSide;
  readonly standsIn: boolean;
}

/** Where a course runs through: to the wall or to the course outside of its own; at a corner that stands in, level with the other's inner edge. */
function through({ side, standsIn }: Neighbor, depth: CourseDepth, joint: Ticks): CourseEnd {
  const { gap } = side.facts;
  const id = `border:${side.wall}`;
  if (standsIn) return { line: offsetLine(side, gap + depth.to), id, facts: jointFacts(0) };
  if (depth.from === 0) return { line: offsetLine(side, 0), id: side.wall, facts: side.facts };
  return { line: offsetLine(side, gap + depth.from - joint), id, facts: jointFacts(joint) };
}

/** Where a course stops: a joint before the inner edge of the one that runs through, or at a corner that stands in before its outer edge. */
function stopped({ side, standsIn }: Neighbor, depth: CourseDepth, joint: Ticks): CourseEnd {
  const { gap } = side.facts;
  const off = gap + (standsIn ? depth.from : depth.to);
  return { line: offsetLine(side, off), id: `border:${side.wall}`, facts: jointFacts(joint) };
}
