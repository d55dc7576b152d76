import type { Step } from './Mark.ts';

/** A part of a drawing that leads somewhere else on its page. */
export interface Link {
  /** Id of the part itself, unique on its page. */
  readonly id: string;
  /** Id of what it leads to. */
  readonly to: string;
  /** What is read aloud. */
  readonly label: string;
  /** Rings on paper, y up, in mm. */
  readonly rings: readonly (readonly Step[])[];
}
