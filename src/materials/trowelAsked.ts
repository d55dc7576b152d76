import type { Job } from '../job/Job.ts';
import { longestSide } from '../job/longestSide.ts';
import type { Ticks } from '../measure/index.ts';
import { bedDepth, type Notch, soldIn, TROWEL_ANGLE, trowelFor } from '../trade/index.ts';
import type { Laid } from './laidSurfaces.ts';

/** The job's trowel held against the one that its tile asks for; beds in ticks, not rounded, of a trowel held as it is on the floor. */
export interface TrowelAsked {
  /** Bed that the job's trowel leaves, and the least that a tile of this size asks for. */
  readonly bed: number;
  readonly least: number;
  readonly pass: boolean;
  /** What is advised instead, sold in the units of the sheet, and the bed that it leaves. */
  readonly advised: Notch;
  readonly advisedBed: number;
  /** Longest side of the tiles laid, of mosaic that of a chip. */
  readonly longest: Ticks;
}

/** What trowel the tiles of a floor ask for, and whether the job's leaves as deep a bed. */
export function trowelAsked(job: Job, { tiles }: Pick<Laid, 'tiles'>): TrowelAsked {
  const longest = longestSide(tiles, job.joint);
  const { notch } = job.products.mortar;
  // A trowel is held against the one that is sold in the same units: printed in others it is the same trowel.
  const wanted = trowelFor(longest, soldIn(notch.width, job.print.system));
  // What is advised is looked for in a shop, so it has the units of the sheet.
  const advised = trowelFor(longest, job.print.system);
  const [bed, least, advisedBed] = [notch, wanted, advised].map(bedOf) as [number, number, number];
  return { bed, least, pass: bed >= least, advised, advisedBed, longest };
}

function bedOf(notch: Notch): number {
  return bedDepth(notch, TROWEL_ANGLE.value);
}
