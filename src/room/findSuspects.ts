import type { Precision } from '../job/Job.ts';
import type { LeastSquares } from './leastSquares.ts';
import type { Observation } from './observations.ts';
import { limitOfW, type ReadingTest, readingTest } from './readingTest.ts';
import { type Kept, keptOf, observed, type Slip, slipsIn, within, without } from './slips.ts';

/** Slips of which the readings say that one has happened; the first is the likeliest. */
export type Doubt = readonly Slip[];

/** Fits what is kept, or gives nothing where that fixes no shape. */
export type Solver = (seen: readonly Observation[]) => LeastSquares | undefined;

/** A slip is told from another where it explains more by this much of chi-square. */
const margin = 2;
/** The same slip in all readings of one distance is rarer than one in a single reading: it has to explain more by this much. */
const twice = 4;
/** So many slips in one room are no slips. */
const most = 8;

interface Judged {
  readonly slips: readonly Slip[];
  readonly test: ReadingTest;
}

function judge(precision: Precision, kept: readonly Kept[], solve: Solver): Judged | undefined {
  const solved = solve(observed(kept));
  if (!solved) return undefined;
  const slips = slipsIn(kept, solved);
  const test = readingTest(precision, kept, solved, slips.length);
  return test ? { slips, test } : undefined;
}

/** The slips that explain the readings best, where one is over the limit. */
function worst({ slips, test }: Judged): Doubt {
  const value = ({ w }: Slip) => Math.abs(w) / test.unit;
  const explains = (slip: Slip) => value(slip) ** 2 - (slip.times > 1 ? twice : 0);
  const sorted = [...slips].sort((a, b) => explains(b) - explains(a));
  if (!sorted.some((slip) => value(slip) > test.limit)) return [];
  return sorted.filter((slip) => explains(sorted[0]!) - explains(slip) <= margin);
}

/** Doubts that the rest still bears out when their first reading is taken in again. */
function stillDoubted(doubts: readonly Doubt[], kept: readonly Kept[], precision: Precision, solve: Solver) {
  return doubts.filter(([slip], i) => {
    if (i === doubts.length - 1) return true;
    const judged = judge(precision, within(kept, slip!), solve);
    const again = judged?.slips.find(({ at, which }) => at === slip!.at && which === slip!.which);
    return !judged || !again || Math.abs(again.w) / judged.test.unit > judged.test.limit;
  });
}

/**
 * Readings that the others contradict: the most contradicted is left out and the rest fitted again, until none is over the
 * limit; each one left out is then tried again with the rest. Slips that explain the readings as well are told with it.
 *
 * Source: data snooping after Baarda, A testing procedure for use in geodetic networks, 1968.
 */
export function findSuspects(seen: readonly Observation[], precision: Precision, solve: Solver): Doubt[] {
  let kept: readonly Kept[] = keptOf(seen);
  let doubts: readonly Doubt[] = [];
  for (let turn = 0; turn < most; turn++) {
    const judged = judge(precision, kept, solve);
    const doubt = judged ? worst(judged) : [];
    if (doubt.length === 0) break;
    kept = without(kept, doubt[0]!);
    doubts = [...doubts, doubt];
    const still = stillDoubted(doubts, kept, precision, solve);
    for (const [slip] of doubts.filter((one) => !still.includes(one))) kept = within(kept, slip!);
    doubts = still;
  }
  return [...doubts];
}

/** Repeated readings of one distance that contradict each other, where nothing else checks them. */
export function repeatDoubts(seen: readonly Observation[], precision: Precision): Doubt[] {
  if (precision.kind === 'unknown') return [];
  return seen.flatMap((one, at) => {
    const share = 1 - 1 / one.read.length;
    if (share <= 0) return [];
    const middle = one.read.reduce((sum, value) => sum + value, 0) / one.read.length;
    const sd = one.sd / Math.sqrt(share);
    const slips = one.read.map((value, which): Slip => {
      const by = (value - middle) / share;
      return { at, which, times: 1, by, sd, share, w: by / sd };
    });
    const doubt = worst({ slips, test: { kind: 'w', limit: limitOfW(slips.length), unit: 1 } });
    return doubt.length > 0 ? [doubt] : [];
  });
}
