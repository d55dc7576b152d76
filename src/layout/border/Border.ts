import type { Point } from '../../geometry/index.ts';
import type { BorderCourse } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';

/** The courses that follow the walls round a field, in the pattern's frame. */
export interface Border {
  readonly courses: readonly (Omit<BorderCourse, 'width'> & {
    readonly width: Ticks;
    /** Where the job leaves the width open: what came out. */
    readonly solved?: Solved;
  })[];
  /** All of it with the joints between its courses, without the gap at the wall. */
  readonly depth: Ticks;
  /** Its inner edge along each wall, where a line is snapped. */
  readonly lines: readonly BorderLine[];
}

export interface BorderLine {
  readonly edge: string;
  /** Square from the wall's face to the inner edge. */
  readonly off: Ticks;
  readonly from: Point;
  readonly to: Point;
}

/** What a border's width was chosen for. */
export interface Solved extends FieldEnds {
  /** How the field comes out along the walls that face each other the other way; missing where none do. */
  readonly other?: FieldEnds;
}

/** How a field ends along two walls that face each other. */
export interface FieldEnds {
  /** What it ends on along both: whole or half tiles, half tiles only, or as it ends on the other side. */
  readonly ends: 'whole' | 'half' | 'alike' | 'none';
  readonly walls: readonly [string, string];
  /** From border to border, within their joints. */
  readonly run: Ticks;
  /** How often the pattern repeats in it. */
  readonly repeats: number;
  /** What is left of the run beyond these repeats, where it ends on nothing clean; missing where the pattern has no repeat that way. */
  readonly over?: Ticks;
}

/** What a piece of a border is of, where it is none of the field. */
export interface OfBorder {
  readonly wall: string;
  /** Counted from the wall inwards, 1 the first; 0 in a doorway behind it, and in an inlay. */
  readonly course: number;
  /** Name of the inlay that it is a piece of, or that the course frames; then `wall` is a side of the inlay. */
  readonly inlay?: string;
}
