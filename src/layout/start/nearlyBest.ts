import { bounds } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { WallScore } from '../WallScore.ts';

/** What the narrowest cut may be less by, as a share of the tile's shorter side, so that corners, openings and what is bought have a say. */
export function allowedShare(
  { tiles }: Pick<Pattern, 'tiles'>,
  { tolerance }: Pick<Ground, 'tolerance'>,
): number {
  const { minX, minY, maxX, maxY } = bounds(tiles[0]!.ring);
  return Math.min(MOST_SHARE, tolerance.narrowest / Math.min(maxX - minX, maxY - minY));
}

/** Of a small tile that would be much. */
const MOST_SHARE = 0.25;

/** Each of two directions may use its slack, and whole ticks a little more. */
const MORE = 2.1;

/** Whether a start is so near to the best in each figure that it need not be left for it. */
export function nearlyBest(
  score: WallScore,
  best: WallScore,
  pattern: Pick<Pattern, 'tiles'>,
  ground: Pick<Ground, 'tolerance'>,
): boolean {
  const { strips, halves } = ground.tolerance;
  return (
    score.strips <= best.strips + MORE * strips &&
    score.halves <= best.halves + MORE * halves &&
    score.narrowest >= best.narrowest - allowedShare(pattern, ground)
  );
}

/** The best figures of some scores, each among those that are as good as any in the figures before it. */
export function bestOf(scores: readonly WallScore[], { strips, halves }: Ground['tolerance']): WallScore {
  const fewest = Math.min(...scores.map((score) => score.strips));
  const few = scores.filter((score) => score.strips <= fewest + strips);
  const least = Math.min(...few.map((score) => score.halves));
  const sound = few.filter((score) => score.halves <= least + halves);
  return { strips: fewest, halves: least, narrowest: Math.max(...sound.map((score) => score.narrowest)) };
}
