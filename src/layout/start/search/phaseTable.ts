import type { WallScore } from '../../WallScore.ts';
import { scoreAt } from './scoreAt.ts';
import type { WallDirection } from './WallReading.ts';

/** What a direction's walls get at a phase, or can get at best within `reach` of it; only that it is less, where a cut is less than `floor`. */
export type PhaseScore = (phase: number, reach: number, floor: number) => WallScore;

/** Stretches into which a spacing is parted, a power of two. */
const STRETCHES = 512;

/**
 * A direction's scores by phase, with the best of every stretch of phases known beforehand: a wide reach is looked up, one narrower
 * than a stretch is reckoned from the walls.
 */
export function phaseTable(direction: WallDirection): PhaseScore {
  const { spacing } = direction;
  const wide = spacing / STRETCHES;
  const first = Array.from({ length: STRETCHES }, (_, i) => scoreAt(direction, (i + 0.5) * wide, wide / 2));
  const levels: WallScore[][] = [first];
  for (let size = 1; size < STRETCHES; size *= 2) {
    const last = levels.at(-1)!;
    levels.push(last.map((one, i) => better(one, last[(i + size) % STRETCHES]!)));
  }
  return (phase, reach, floor) => {
    if (reach < wide) return scoreAt(direction, phase, reach, floor);
    const low = Math.floor((phase - reach) / wide);
    const count = Math.min(STRETCHES, Math.floor((phase + reach) / wide) - low + 1);
    const level = Math.floor(Math.log2(count));
    const at = (i: number) => levels[level]![((i % STRETCHES) + STRETCHES) % STRETCHES]!;
    return better(at(low), at(low + count - 2 ** level));
  };
}

/** In each figure the better of two. */
function better(one: WallScore, other: WallScore): WallScore {
  return {
    strips: Math.min(one.strips, other.strips),
    halves: Math.min(one.halves, other.halves),
    narrowest: Math.max(one.narrowest, other.narrowest),
  };
}
