import { bounds } from '../../geometry/index.ts';
import type { PatternTile } from '../../pattern/Pattern.ts';
import type { Stretch } from './balanced.ts';
import type { FacingRun } from './findRuns.ts';

/** What a stretch takes of a pattern. */
export interface Tiled {
  readonly tiles: readonly Pick<PatternTile, 'ring'>[];
  readonly joint: number;
}

/** A run as the first tile of the pattern sees it along x (0) or y (1). */
export function stretchOf(
  { low, high }: Pick<FacingRun, 'low' | 'high'>,
  pattern: Tiled,
  axis: 0 | 1,
): Stretch {
  const { minX, minY, maxX, maxY } = bounds(pattern.tiles[0]!.ring);
  return { low, high, size: axis === 0 ? maxX - minX : maxY - minY, joint: pattern.joint };
}
