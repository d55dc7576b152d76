import type { WallScore } from '../../src/layout/WallScore.ts';
import { START_TOLERANCE } from '../../src/trade/index.ts';

const FOOT = 97536;

/** Whether a start is worse than another in one figure, by more than the search may let it be, and no better in those before. */
export function isWorseStart(one: WallScore, other: WallScore): boolean {
  const more = 0.3 * FOOT;
  if (one.strips > other.strips + 2 * START_TOLERANCE.value.strips + more) return true;
  if (other.strips > one.strips) return false;
  if (one.halves > other.halves + 2 * START_TOLERANCE.value.halves + more) return true;
  return other.halves <= one.halves && one.narrowest < other.narrowest - 0.02;
}
