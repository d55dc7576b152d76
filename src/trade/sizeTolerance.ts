import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

export type TileEdge = 'rectified' | 'calibrated' | 'natural';

interface ShareOrLess {
  readonly share: number;
  readonly inches: number;
}

/** A nominal size is only a name: share by which a calibrated pressed floor tile may be over or under it. */
export const NOMINAL_TOLERANCE: Fact<number> = { value: 0.03, mark: 'S', source: 'ANSI A137.1' };

/** Each side of a rectified tile against the mean of its lot: a share or a length, whichever is less. */
export const RECTIFIED_TOLERANCE: Fact<ShareOrLess> = {
  value: { share: 0.0025, inches: 0.03 },
  mark: 'S',
  source: 'ANSI A137.1',
};

/** Warpage of an edge: a share or a length, whichever is less. */
export const EDGE_WARPAGE: Fact<Readonly<Record<'rectified' | 'calibrated', ShareOrLess>>> = {
  value: { rectified: { share: 0.004, inches: 0.05 }, calibrated: { share: 0.0075, inches: 0.08 } },
  mark: 'S',
  source: 'ANSI A137.1',
};

/** Work size of dry-pressed porcelain, group BIa: a share of the side, but not more than a length. */
export const WORK_SIZE: Fact<Readonly<Record<'rectified' | 'other', { share: number; mm: number }>>> = {
  value: { rectified: { share: 0.003, mm: 1 }, other: { share: 0.006, mm: 2 } },
  mark: 'S',
  source: 'EN 14411 Annex G',
};

/**
 * Smallest and largest side that may be sold under a nominal size.
 *
 * @example
 * nominalRange(97536) //=> [94610, 100462]
 */
export function nominalRange(nominal: Ticks): readonly [Ticks, Ticks] {
  const off = Math.round(nominal * NOMINAL_TOLERANCE.value);
  return [nominal - off, nominal + off];
}

/**
 * How far a side of a rectified tile may be from the mean of its lot, in ticks either way.
 *
 * @example
 * rectifiedTolerance(65024) //=> 163
 */
export function rectifiedTolerance(side: Ticks): Ticks {
  return lesser(side, RECTIFIED_TOLERANCE.value);
}

/**
 * Largest warpage of an edge in ticks. A natural edge is held to the rule for calibrated tile.
 *
 * @example
 * edgeWarpage(195072, 'rectified') //=> 406
 */
export function edgeWarpage(side: Ticks, edge: TileEdge): Ticks {
  return lesser(side, EDGE_WARPAGE.value[edge === 'rectified' ? 'rectified' : 'calibrated']);
}

/**
 * How far a side may be from the work size, in ticks either way.
 *
 * @example
 * workSizeTolerance(192000, 'calibrated') //=> 640
 */
export function workSizeTolerance(side: Ticks, edge: TileEdge): Ticks {
  const { share, mm } = WORK_SIZE.value[edge === 'rectified' ? 'rectified' : 'other'];
  return Math.min(Math.round(side * share), millimetres(mm));
}

function lesser(side: Ticks, limit: ShareOrLess): Ticks {
  return Math.min(Math.round(side * limit.share), inches(limit.inches));
}
