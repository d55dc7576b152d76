import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Solved } from './Border.ts';

/** How far on a pattern looks the same along a direction, and what a field that long ends on. */
export interface RepeatAlong {
  readonly length: Ticks;
  readonly ends: Exclude<Solved['ends'], 'none'>;
}

/** A wall may lean against the pattern by so much, in radians, and still lie along it. */
const LEAN = 0.06;
/** What is left of two steps that measure each other. */
const ROUNDING: Ticks = 32;
/** A repeat shorter than this share of a module is none that the eye sees. */
const LEAST = 0.2;

/**
 * The repeat of a pattern along a direction of its frame: tiles in courses by their module, others by the step that measures both
 * vectors of their repeat. Null where none does.
 */
export function repeatAlong(pattern: Pattern, [dx, dy]: Point): RepeatAlong | null {
  const { a, b, module, inCourses } = pattern;
  const axis = Math.abs(dx) < LEAN ? 1 : Math.abs(dy) < LEAN ? 0 : null;
  if (inCourses && axis !== null) return { length: module[axis], ends: 'whole' };
  const steps = [a, b].map(([x, y]) => Math.abs(x * dx + y * dy)) as [number, number];
  const length = common(...steps);
  if (length < LEAST * Math.max(...module)) return null;
  // Squares at 45° have a corner or a middle on each such line: every tile that it meets is halved.
  const halved = inCourses && module[0] === module[1] && Math.abs(Math.abs(dx) - Math.abs(dy)) < LEAN;
  return { length, ends: halved ? 'half' : 'alike' };
}

/** The longest length of which both are multiples, but for rounding. */
function common(one: number, other: number): number {
  if (other <= ROUNDING) return one;
  const rest = one % other;
  return common(other, Math.min(rest, other - rest));
}
