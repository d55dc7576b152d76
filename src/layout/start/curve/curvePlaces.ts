import { bounds } from '../../../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../../../measure/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import { jointOnMiddle, tileOnMiddle } from '../balanced.ts';
import { AXES, type MainRuns } from '../Choice.ts';
import { endCuts } from '../endCuts.ts';
import { stretchOf } from '../stretchOf.ts';

/** A cut that is to share a tile is made less by this, in ticks: what is sawn may be rounded up to a step. */
const EASE: Ticks = TICKS_PER_INCH / 32;

/** What a place of one axis depends on. */
export interface CurveAxis {
  readonly runs: MainRuns;
  readonly pattern: Pattern;
  readonly axis: 0 | 1;
  readonly kerf: Ticks;
  /** The widest strip that is left out as gap at the low and at the high end of the run. */
  readonly absent: readonly [Ticks, Ticks];
}

/**
 * Places of the pattern on one axis at which the number of tiles may change, on the run that decides: balanced both ways; with a cut
 * at either end of half a tile less half the kerf, of a whole tile, or of a strip that is left out.
 */
export function curvePlaces({ runs, pattern, axis, kerf, absent }: CurveAxis): Ticks[] {
  const stretch = stretchOf(runs[AXES[axis]], pattern, axis);
  const { size } = stretch;
  const halves = placesFor([(size - kerf) / 2 - EASE, size], { runs, pattern, axis });
  const leftOut = [
    ...placesFor([absent[0] - EASE], { runs, pattern, axis }).slice(0, 1),
    ...placesFor([absent[1] - EASE], { runs, pattern, axis }).slice(1, 2),
  ];
  return [...new Set([jointOnMiddle(stretch), tileOnMiddle(stretch), ...halves, ...leftOut])];
}

/** Places on one axis at which a cut takes what a cut of the other axis, the pattern standing at `other` there, leaves of a square tile. */
export function placesBeside({ runs, pattern, axis, kerf }: CurveAxis, other: Ticks): Ticks[] {
  const { minX, minY, maxX, maxY } = bounds(pattern.tiles[0]!.ring);
  if (Math.abs(maxX - minX - (maxY - minY)) > EASE) return [];
  const across = axis === 0 ? 1 : 0;
  const stretch = stretchOf(runs[AXES[across]], pattern, across);
  const left = endCuts(stretch, other).map((cut) => stretch.size - kerf - cut - EASE);
  return placesFor(left, { runs, pattern, axis });
}

/** Where a cut of each size is at the low end, and then at the high end, of the run; a course of each kind in turn. */
function placesFor(
  sizes: readonly number[],
  { runs, pattern, axis }: Pick<CurveAxis, 'runs' | 'pattern' | 'axis'>,
): Ticks[] {
  const { low, high, size } = stretchOf(runs[AXES[axis]], pattern, axis);
  const shifts =
    axis === 0 ? pattern.tiles.map(({ ring }) => ring[0]![0] - pattern.tiles[0]!.ring[0]![0]) : [0];
  return sizes
    .map((one) => Math.floor(one))
    .filter((one) => one > 0 && one <= size)
    .flatMap((one) => shifts.flatMap((shift) => [low + one - size - shift, high - one - shift]));
}
