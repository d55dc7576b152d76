import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import { type FacingRun, findRuns, longestSpan } from './findRuns.ts';

/** All runs of each axis, the one that decides first; never empty. */
export interface AxisRuns {
  readonly along: readonly FacingRun[];
  readonly across: readonly FacingRun[];
}

/** The facing runs of a field along both axes; where no two walls face, its longest stretch stands for them. */
export function axisRuns({ edges, faces }: Ground): AxisRuns {
  const [along, across] = [findRuns(edges, faces, 0), findRuns(edges, faces, 1)];
  return {
    along: along.length > 0 ? along : [longestSpan(edges, faces, 0)],
    across: across.length > 0 ? across : [longestSpan(edges, faces, 1)],
  };
}

/** Whether a pattern turned so many degrees against its room lies so slantwise that the room's own directions decide where it starts. */
export function isSlanted(slantDeg: number): boolean {
  const off = Math.abs(slantDeg % 90);
  return Math.min(off, 90 - off) > LEAST_SLANT;
}

/** Degrees up to which walls still count as lying along the axes. */
const LEAST_SLANT = 10;

/** Spacing of a pattern along a direction: its shortest repeat that way, or where no repeat fits, of its joints. */
export function spacingAlong({ a, b, module }: Pattern, angle: number): number {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  let least = Math.min(module[0] / Math.abs(dx), module[1] / Math.abs(dy));
  let found = Infinity;
  for (let i = -REPEATS; i <= REPEATS; i++) {
    for (let j = -REPEATS; j <= REPEATS; j++) {
      const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      const [ahead, aside] = [x * dx + y * dy, Math.abs(x * dy - y * dx)];
      if (ahead > 0 && aside <= NEARLY && ahead < found) found = ahead;
    }
  }
  if (Number.isFinite(found)) least = found;
  return least;
}

/** Repeats tried each way, and how far off the direction, in ticks, one may end. */
const REPEATS = 6;
const NEARLY = 2;
