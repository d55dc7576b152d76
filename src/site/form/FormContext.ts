import type { FieldView, FormView } from '../../form/FieldView.ts';
import type { LiveRoom } from '../../form/LiveRoom.ts';
import type { Problem } from '../../job/Problem.ts';
import type { Path } from '../../job/shape/Trouble.ts';
import type { Say } from '../makeWords.ts';

/** What is kept of the form: everything else follows from it. */
export interface FormState {
  /** The job file; empty before a shape is chosen. */
  readonly text: string;
  readonly lang: string;
  /** Which floor is shown, where there are several. */
  readonly floor?: string;
}

/** What is shown of a state, in words of one language. */
export interface FormContext {
  readonly state: FormState;
  readonly say: Say;
  /** All sentences of a problem; with its line in the file where the form does not show its place. */
  readonly problem: (problem: Problem, withLine: boolean) => string;
  readonly tree: unknown;
  readonly floor: Path;
  readonly view: FormView;
  readonly problems: readonly Problem[];
  readonly room: LiveRoom | undefined;
  /** Every question by its id. */
  readonly fields: ReadonlyMap<string, FieldView>;
}
