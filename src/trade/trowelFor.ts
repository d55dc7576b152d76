import type { Ticks } from '../measure/index.ts';
import type { Notch } from './bedDepth.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

interface TrowelRow {
  /** Longest side below which the row holds, in inches. */
  readonly under: number;
  readonly kind: Notch['kind'];
  readonly width: number;
  readonly depth: number;
  readonly space: number;
}

/** Trowel by the tile's longest side, in inches. Lift a tile and check. */
export const TROWELS: Fact<readonly TrowelRow[]> = {
  value: [
    { under: 4, kind: 'v', width: 3 / 16, depth: 3 / 16, space: 0 },
    { under: 8, kind: 'square', width: 1 / 4, depth: 1 / 4, space: 1 / 4 },
    { under: 16, kind: 'square', width: 1 / 4, depth: 3 / 8, space: 1 / 4 },
    { under: Number.POSITIVE_INFINITY, kind: 'square', width: 1 / 2, depth: 1 / 2, space: 1 / 2 },
  ],
  mark: 'P',
  source: 'practice',
};

/**
 * Notch to begin with for a tile, in ticks.
 *
 * @example
 * trowelFor(96012) //=> { kind: 'square', width: 2032, depth: 3048, space: 2032 }
 */
export function trowelFor(longestSide: Ticks): Notch {
  const rows = TROWELS.value;
  const row = rows.find(({ under }) => longestSide < under * inches(1)) ?? rows[rows.length - 1]!;
  return { kind: row.kind, width: inches(row.width), depth: inches(row.depth), space: inches(row.space) };
}
