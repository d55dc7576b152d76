import { mean } from '../measure/index.ts';
import type { LeastSquares } from './leastSquares.ts';
import { variance } from './leastSquares.ts';
import type { Observation } from './observations.ts';

/** Something read, with the places of those readings of it that take part. */
export interface Kept {
  readonly one: Observation;
  readonly which: readonly number[];
}

/** What the readings say of the thought that one reading, or all of one observation, is wrong. */
export interface Slip {
  /** Number of the observation. */
  readonly at: number;
  /** Which reading of it; null: all of them, or the only one. */
  readonly which: number | null;
  /** How many readings bear the slip. */
  readonly times: number;
  /** Read less what all others say, in ticks. */
  readonly by: number;
  /** Standard deviation of `by`. */
  readonly sd: number;
  /** Share that the others check, 0 to 1. */
  readonly share: number;
  /** Baarda's w: the correction over its own standard deviation; negative where read too short. */
  readonly w: number;
}

/** Below this share a reading is checked by nothing. */
export const unchecked = 1e-6;

export const keptOf = (seen: readonly Observation[]): Kept[] =>
  seen.map((one) => ({ one, which: one.read.map((_, k) => k) }));

/** The observations that are left. */
export function observed(kept: readonly Kept[]): Observation[] {
  return kept
    .filter(({ which }) => which.length > 0)
    .map(({ one, which }) => {
      const read = which.map((k) => one.read[k]!);
      return { ...one, read, mean: mean(read) };
    });
}

/** What is kept when a reading, or all of an observation, is left out. */
export function without(kept: readonly Kept[], { at, which }: Pick<Slip, 'at' | 'which'>): Kept[] {
  return kept.map((one, i) =>
    i !== at ? one : { ...one, which: which === null ? [] : one.which.filter((k) => k !== which) },
  );
}

/** What is kept when they are taken in again. */
export function within(kept: readonly Kept[], { at, which }: Pick<Slip, 'at' | 'which'>): Kept[] {
  return kept.map((one, i) =>
    i !== at
      ? one
      : {
          ...one,
          which: which === null ? one.one.read.map((_, k) => k) : [...one.which, which].sort((a, b) => a - b),
        },
  );
}

function slip(
  at: number,
  [which, times]: readonly [number | null, number],
  residual: number,
  sd: number,
  share: number,
): Slip {
  const root = Math.sqrt(share);
  return { at, which, times, by: -residual / share, sd: sd / root, share, w: -residual / (sd * root) };
}

/** Slips thought of in one observation: each of its readings alone, and all together. */
function slipsOf({ one, which }: Kept, at: number, adjusted: number, q: number): Slip[] {
  const times = which.length;
  const read = which.map((k) => one.read[k]!);
  const shared = 1 - (times * q) / one.sd ** 2;
  const middle = read.reduce((sum, value) => sum + value, 0) / times;
  const all =
    shared < unchecked ? [] : [slip(at, [null, times], adjusted - middle, one.sd / Math.sqrt(times), shared)];
  if (times === 1) return all;
  const alone = 1 - q / one.sd ** 2;
  return [...which.map((k) => slip(at, [k, 1], adjusted - one.read[k]!, one.sd, alone)), ...all];
}

/**
 * Every slip that the readings could tell of, after a fit of what is kept: corrections, their shares and Baarda's w.
 *
 * Source: Baarda, A testing procedure for use in geodetic networks, 1968.
 */
export function slipsIn(kept: readonly Kept[], solved: LeastSquares): Slip[] {
  let row = 0;
  return kept.flatMap((one, at) => {
    if (one.which.length === 0) return [];
    const { coefficients } = solved.rows[row]!;
    const middle = mean(one.which.map((k) => one.one.read[k]!));
    const adjusted = middle + solved.residuals[row]!;
    row += 1;
    return slipsOf(one, at, adjusted, variance(solved.factor, coefficients));
  });
}

/** Readings more than unknowns, each counted. */
export function degreesOfFreedom(kept: readonly Kept[], solved: LeastSquares): number {
  const read = kept.reduce((sum, { which }) => sum + which.length, 0);
  const straight = solved.rows.length - solved.residuals.length;
  return read + straight - solved.factor.length;
}

/** Weighted sum of the squared corrections of all readings. */
export function squaresOf(kept: readonly Kept[], solved: LeastSquares): number {
  const left = kept.filter(({ which }) => which.length > 0);
  const read = left.reduce((sum, { one, which }, row) => {
    const values = which.map((k) => one.read[k]!);
    const adjusted = mean(values) + solved.residuals[row]!;
    return sum + values.reduce((squares, value) => squares + ((adjusted - value) / one.sd) ** 2, 0);
  }, 0);
  const straight = solved.rows.slice(solved.residuals.length);
  return straight.reduce((sum, { misfit, weight }) => sum + weight * misfit ** 2, read);
}
