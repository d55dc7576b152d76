import { bounds } from '../../geometry/index.ts';
import { TICKS_PER_INCH } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { WallScore } from '../WallScore.ts';
import { SLACK } from './search/searchPlaces.ts';

/** Width, in ticks, by which the narrowest cut may be less, so that corners, openings and what is bought have a say; common practice, no source. */
const NARROWER = 3 * TICKS_PER_INCH;

/** What the narrowest cut may be less by, as a share of the tile's shorter side. */
export function allowedShare({ tiles }: Pick<Pattern, 'tiles'>): number {
  const { minX, minY, maxX, maxY } = bounds(tiles[0]!.ring);
  return Math.min(MOST_SHARE, NARROWER / Math.min(maxX - minX, maxY - minY));
}

/** Of a small tile that would be much. */
const MOST_SHARE = 0.25;

/** Each of two directions may use its slack, and whole ticks a little more. */
const MORE = 2.1;

/** Whether a start is so near to the best in each figure that it need not be left for it. */
export function nearlyBest(score: WallScore, best: WallScore, pattern: Pick<Pattern, 'tiles'>): boolean {
  return (
    score.strips <= best.strips + MORE * SLACK.strips &&
    score.halves <= best.halves + MORE * SLACK.halves &&
    score.narrowest >= best.narrowest - allowedShare(pattern)
  );
}
