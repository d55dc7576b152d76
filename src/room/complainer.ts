import type { Problem } from '../job/Problem.ts';
import { printLength, type System, type Ticks } from '../measure/index.ts';

/** Makes the problems of one surface; lengths in ticks become text in the job's own system. */
export interface Complain {
  (code: string, path: readonly string[], found: string, figures?: Problem['figures']): Problem;
  readonly text: (ticks: Ticks) => string;
}

/** The job file's own key of the surface stands before every path. */
export function complainer(surface: string, system: System): Complain {
  const complain = (
    code: string,
    path: readonly string[],
    found: string,
    figures: Problem['figures'] = {},
  ): Problem => ({ code, path: [surface, ...path], found, figures });
  return Object.assign(complain, {
    text: (ticks: Ticks) => printLength(Math.round(ticks), system, { feet: true }),
  });
}
