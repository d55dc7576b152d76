import type { Point } from '../../../geometry/index.ts';
import type { StartTolerance } from '../../../trade/index.ts';
import type { WallScore } from '../../WallScore.ts';
import type { PhaseScore } from './phaseTable.ts';

/** Places of a pattern, in whole ticks of one or two coordinates, and how each direction's phase follows from them. */
export interface PlaceQuestion {
  readonly directions: readonly { readonly scores: PhaseScore; readonly row: Point; readonly at: number }[];
  readonly low: Point;
  readonly high: Point;
  /** Places that are tried first; the better they are the sooner the rest is ruled out. */
  readonly seeds: readonly Point[];
  /** Boxes looked at before the search gives what it has, with the gap that is left. */
  readonly boxes: number;
  /** What a place may be worse by in one figure to be better in the next, in ticks of wall. */
  readonly slack: Pick<StartTolerance, 'strips' | 'halves'>;
  /** How far a place is off balance, in ticks; none where that cannot be told. */
  readonly offBalance?: (place: Point) => number;
}

export interface ScoredPlace {
  readonly place: Point;
  readonly score: WallScore;
}

/**
 * What all directions together make of a place, or at best of the places within `reach` of it. Where its narrowest cut is less than
 * `floor` nothing else of it counts.
 */
export function scorePlace(
  { directions }: Pick<PlaceQuestion, 'directions'>,
  [x, y]: Point,
  reach: Point = [0, 0],
  floor = 0,
): WallScore {
  let [strips, halves, narrowest] = [0, 0, 1];
  for (const { scores, row, at } of directions) {
    const phase = at + row[0] * x + row[1] * y;
    const one = scores(phase, Math.abs(row[0]) * reach[0] + Math.abs(row[1]) * reach[1], floor);
    strips += one.strips;
    halves += one.halves;
    narrowest = Math.min(narrowest, one.narrowest);
    if (narrowest < floor) break;
  }
  return { strips, halves, narrowest };
}
