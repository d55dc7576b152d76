import type { Ring } from '../geometry/index.ts';
import type { Corner } from '../job/Job.ts';
import { type Covariance, meanSd, traceWith } from './freeCovariance.ts';
import { isInside, joins } from './measureNext.ts';
import type { Observation } from './observations.ts';
import type { Adjustment } from './Room.ts';

interface Candidate {
  readonly id: string;
  readonly ends: readonly [number, number];
  readonly sd: number;
}

/** Everything that a tape can read between corners: diagonals not read yet, and once more what has been read once. */
function candidates(
  names: readonly Corner[],
  ring: Ring,
  seen: readonly Observation[],
  sd: number,
  freshOnly: boolean,
) {
  const all: Candidate[] = [];
  for (let i = 0; i < ring.length; i++)
    for (let j = i + 1; j < ring.length; j++) {
      const read = seen.find((one) => joins(one, i, j));
      if (read && (freshOnly || read.read.length > 1)) continue;
      if (!read && !isInside(ring, i, j)) continue;
      const id = read?.id ?? `${names[i]!.name}-${names[j]!.name}`;
      all.push({ id, ends: [i, j], sd: read?.sd ?? sd });
    }
  return all;
}

/**
 * The reading that would make the corners surest: of all that a tape can read, the one that leaves the least trace of the
 * covariance with nothing held fast. With `freshOnly` only what has not been read yet. Undefined where nothing is left.
 */
export function nextReading(
  names: readonly Corner[],
  ring: Ring,
  seen: readonly Observation[],
  covariance: Covariance,
  sd: number,
  freshOnly = false,
): NonNullable<Adjustment['next']> | undefined {
  let best: { readonly id: string; readonly trace: number } | undefined;
  for (const { id, ends, sd: own } of candidates(names, ring, seen, sd, freshOnly)) {
    const trace = traceWith(covariance, ring, ends, own);
    // Of readings that help alike, the first is taken.
    if (!best || trace < best.trace * (1 - 1e-6)) best = { id, trace };
  }
  if (!best) return undefined;
  const then = Math.sqrt((2 * best.trace) / covariance.length);
  return { id: best.id, sdNow: Math.round(meanSd(covariance)), sdThen: Math.round(then) };
}
