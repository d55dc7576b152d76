import type { WallScore } from '../../WallScore.ts';
import type { PhaseScore } from './phaseTable.ts';

/** Scores that keep what they gave for a place: the search comes back to most places, having followed others down to them. */
export function remembered(scores: PhaseScore): PhaseScore {
  const known = new Map<number, Map<number, WallScore>>();
  return (phase, reach) => {
    // Boxes are looked at once.
    if (reach > 0) return scores(phase, reach);
    const byPhase = known.get(reach) ?? new Map<number, WallScore>();
    known.set(reach, byPhase);
    const score = byPhase.get(phase) ?? scores(phase, reach);
    byPhase.set(phase, score);
    return score;
  };
}
