import type { Point } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import { fitBaseLine } from './baseLine.ts';
import { designRows } from './designRows.ts';
import type { Observation } from './observations.ts';
import type { AdjustedReading } from './Room.ts';
import { limitOfW, type ReadingTest } from './readingTest.ts';
import { type Slip, unchecked } from './slips.ts';

/** What the adjustment says of its readings as such. */
export interface Checked {
  /** Every slip that the readings could tell of. */
  readonly slips: readonly Slip[];
  readonly test: ReadingTest;
}

/** Standard deviations beside its own that a slip needs so as to be found in four cases of five. Source: Baarda 1968. */
const power = 0.8416;

const fine = (value: number) => Math.round(value * 1e4) / 1e4;

/** How well one observation is checked: the numbers of a single reading of it. */
function checkOf(id: string, seen: readonly Observation[], checked: Checked | undefined) {
  const none = { redundancyNumber: 0, test: null, smallestSlip: null };
  const at = seen.findIndex((one) => one.id === id);
  const own = checked?.slips.filter((slip) => slip.at === at) ?? [];
  if (!checked || own.length === 0) return none;
  const single = own.find(({ which }) => which !== null) ?? own[0]!;
  if (single.share < unchecked) return none;
  const { kind, limit, unit } = checked.test;
  const value = Math.max(...own.map(({ w }) => Math.abs(w))) / unit;
  return {
    redundancyNumber: fine(single.share),
    test: { kind, value: fine(value), limit: fine(limit) },
    smallestSlip: Math.ceil((limitOfW(checked.slips.length) + power) * single.sd * unit),
  };
}

/** Every reading beside the value used, with what the others say of it. `used` are the readings that took part. */
export function adjustedReadings(
  surface: SurfaceSpec,
  seen: readonly Observation[],
  used: readonly Observation[],
  corners: readonly Point[],
  checked: Checked | undefined,
): AdjustedReading[] {
  const line = fitBaseLine(corners, used) ?? fitBaseLine(corners, seen);
  const known = line ? seen : seen.filter(({ kind }) => kind !== 'baseLine');
  const rows = designRows(line ? { corners, line } : { corners }, known, { corners: [], sd: 1 });
  return known.map((one, i) => {
    const value = Math.round(one.mean - rows[i]!.misfit);
    const { id, kind, read, mean } = one;
    return {
      id,
      kind,
      read,
      mean,
      used: value,
      correction: value - mean,
      setAside: surface.setAside.includes(id),
      ...checkOf(id, used, checked),
    };
  });
}
