import type { SurfaceSpec } from '../../job/Job.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Candidate } from '../Layout.ts';
import type { Choice } from './Choice.ts';

/** A start with its figures. */
export interface Scored {
  readonly choice: Choice;
  readonly candidate: Candidate;
}

/** Everything a start is chosen from. */
export interface StartQuestion {
  readonly ground: Ground;
  readonly pattern: Pattern;
  readonly surface: Pick<SurfaceSpec, 'pattern' | 'start'>;
  /** The same pattern with another joint, for what a slightly narrower joint would save. */
  readonly withJoint: (joint: number) => Pattern;
}
