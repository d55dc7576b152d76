import type { ChalkLine } from '../Layout.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import { stepsFrom } from '../names/stepsFrom.ts';
import type { Lattice } from '../pieces/Lattice.ts';

/**
 * On which courses' joints an upright chalk line lies, by the rows counted from the crossing; undefined where
 * joints run straight through.
 */
export function coursesOn(crossing: readonly [number, number], lattice: Lattice): ChalkLine['courses'] {
  const { pattern, origin, wide } = lattice;
  if (pattern.straightX || !pattern.inCourses) return undefined;
  const { tiles, b, module, joint } = pattern;
  const every = b[0] === 0 ? tiles.length : 0;
  const along = crossing[0] + Math.ceil(joint / 2) - origin[0];
  const offLine = (j: number) =>
    Math.abs(along - j * b[0] - module[0] * Math.round((along - j * b[0]) / module[0]));
  const nearest = Math.round((drawnTogether(wide, 1, crossing[1]) - origin[1]) / b[1]);
  // From the crossing outwards, so that the nearest course wins.
  const around = Array.from({ length: 2 * REACH + 1 }, (_, n) =>
    n % 2 === 0 ? nearest + n / 2 : nearest - (n + 1) / 2,
  );
  const j = every > 0 ? 0 : around.reduce((best, one) => (offLine(one) < offLine(best) ? one : best));
  const { rows } = stepsFrom(crossing, lattice)({ k: 0, i: 0, j });
  return every > 0 ? { first: ((rows % every) + every) % every, every } : { first: rows, every };
}

/** Courses looked through to either side of the crossing. */
const REACH = 200;
