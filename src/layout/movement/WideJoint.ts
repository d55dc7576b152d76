import type { Ticks } from '../../measure/index.ts';

/** A straight joint of the pattern that is laid wider than the others, and by how much, in ticks. */
export interface WideJoint {
  /** 0 for a joint upright in the frame, which has one place along x; 1 for a level one. */
  readonly axis: 0 | 1;
  /** Its middle in the pattern as it repeats, before it is pulled apart. */
  readonly at: Ticks;
  readonly extra: Ticks;
}
