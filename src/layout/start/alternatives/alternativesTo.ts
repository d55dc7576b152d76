import type { Candidate } from '../../Layout.ts';
import type { MainRuns } from '../Choice.ts';
import type { Scored, StartQuestion } from '../chooseStart.ts';
import type { AxisRuns } from '../mainRuns.ts';

/** Further starts that are worth a look beside the chosen one. */
export function alternativesTo(
  _question: StartQuestion,
  _chosen: Scored,
  _ends: MainRuns,
  _runs: AxisRuns,
): readonly Candidate[] {
  return [];
}
