import type { System, Ticks } from '../measure/index.ts';
import type { Notch } from './bedDepth.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

interface TrowelRow {
  /** Longest side below which the row holds, in inches. */
  readonly under: number;
  readonly kind: Notch['kind'];
  /** Width, depth and space of the notches, as trowels are sold in each system. */
  readonly inches: readonly [number, number, number];
  readonly mm: readonly [number, number, number];
}

/** Trowel by the tile's longest side. Lift a tile and check. */
export const TROWELS: Fact<readonly TrowelRow[]> = {
  value: [
    { under: 4, kind: 'v', inches: [3 / 16, 3 / 16, 0], mm: [5, 5, 0] },
    { under: 8, kind: 'square', inches: [1 / 4, 1 / 4, 1 / 4], mm: [6, 6, 6] },
    { under: 16, kind: 'square', inches: [1 / 4, 3 / 8, 1 / 4], mm: [6, 10, 6] },
    { under: Number.POSITIVE_INFINITY, kind: 'square', inches: [1 / 2, 1 / 2, 1 / 2], mm: [12, 12, 12] },
  ],
  mark: 'P',
  source: 'practice',
};

/**
 * Notch to begin with for a tile, in ticks.
 *
 * @example
 * trowelFor(96012) //=> { kind: 'square', width: 2032, depth: 3048, space: 2032 }
 * trowelFor(96000, 'mm') //=> { kind: 'square', width: 1920, depth: 3200, space: 1920 }
 */
export function trowelFor(longestSide: Ticks, system: System = 'inches'): Notch {
  const rows = TROWELS.value;
  const row = rows.find(({ under }) => longestSide < under * inches(1)) ?? rows[rows.length - 1]!;
  const [width, depth, space] = row[system].map(system === 'mm' ? millimetres : inches);
  return { kind: row.kind, width: width!, depth: depth!, space: space! };
}
