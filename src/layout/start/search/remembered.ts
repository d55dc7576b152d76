import type { WallScore } from '../../WallScore.ts';
import type { PhaseScore } from './phaseTable.ts';

/** Scores that keep what they gave for a place: the search comes back to most places, having followed others down to them. */
export function remembered(scores: PhaseScore): PhaseScore {
  const known = new Map<number, Map<number, WallScore>>();
  return (phase, reach, floor) => {
    // Boxes are looked at once.
    if (reach > 0) return scores(phase, reach, floor);
    const byPhase = known.get(reach) ?? new Map<number, WallScore>();
    known.set(reach, byPhase);
    const before = byPhase.get(phase);
    if (before) return before;
    const score = scores(phase, reach, floor);
    // What was not asked to the end is no score to keep.
    if (score.narrowest >= floor) byPhase.set(phase, score);
    return score;
  };
}
