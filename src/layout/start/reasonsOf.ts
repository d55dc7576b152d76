import type { AxisStart, Candidate } from '../Layout.ts';
import { AXES, type Choice } from './Choice.ts';

type Reasons = Candidate['reason'];

/**
 * Why a start stands where it does, one reason an axis: `start.joint`, `start.tile`, `start.jointQuarter`,
 * `start.tileQuarter` or `start.fixed`, with the run that was centred.
 */
export function reasonsOf(choice: Choice): Reasons {
  return AXES.map((axis) => ({ code: `start.${choice[axis].what}`, figures: figuresOf(axis, choice[axis]) }));
}

function figuresOf(axis: string, { wish, position, run }: AxisStart): Reasons[number]['figures'] {
  return { axis, wish, position, ...(run && { from: run.from, to: run.to, run: run.length }) };
}
