import type { MainRuns } from '../Choice.ts';
import type { AxisRuns } from '../mainRuns.ts';
import type { Scored, StartQuestion } from '../StartQuestion.ts';

/** Everything an alternative is made from. */
export interface AlternativeQuestion extends StartQuestion {
  readonly chosen: Scored;
  /** Runs whose end cuts are told. */
  readonly ends: MainRuns;
  /** All runs, the one that decided first. */
  readonly runs: AxisRuns;
}
