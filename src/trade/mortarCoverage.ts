import { TICKS_PER_MM } from '../measure/index.ts';
import { bedDepth, type Notch, TROWEL_ANGLE } from './bedDepth.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

const SQ_FT_IN_M2 = 0.09290304;
const LB_IN_KG = 0.45359237;

interface CoverageRow {
  /** Width, depth and space of square notches, in inches. */
  readonly notch: readonly [number, number, number];
  /** Square feet a bag covers: least, most, and the figure to plan with. */
  readonly low: number;
  readonly high: number;
  readonly plan: number;
}

/** What a 50 lb bag of mortar covers, in square feet. */
export const MORTAR_COVERAGE: Fact<{ bagLb: number; rows: readonly CoverageRow[] }> = {
  value: {
    bagLb: 50,
    rows: [
      { notch: [1 / 4, 1 / 4, 1 / 4], low: 80, high: 100, plan: 80 },
      { notch: [1 / 4, 3 / 8, 1 / 4], low: 60, high: 80, plan: 65 },
      { notch: [1 / 2, 1 / 2, 1 / 2], low: 40, high: 50, plan: 45 },
    ],
  },
  mark: 'P',
  source: 'practice',
};

/** Share bought beyond the sum, and the share of its coverage that a bag keeps when tiles are back-buttered. */
export const MORTAR_WASTE: Fact<{ waste: number; backButter: number }> = {
  value: { waste: 0.1, backButter: 0.8 },
  mark: 'P',
  source: 'practice',
};

/** Mortar powder in a litre of fresh bed, in kg. */
export const MORTAR_DENSITY: Fact<number> = { value: 1.6, mark: 'M', source: 'memory' };

/**
 * Mortar that a notched trowel leaves on the floor, in kg of powder per square metre.
 *
 * @example
 * notchMass({ kind: 'square', width: 4064, depth: 4064, space: 4064 }, 90).toFixed(2) //=> '10.16'
 */
export function notchMass(notch: Notch, angleDeg: number = TROWEL_ANGLE.value): number {
  return bedMass(bedDepth(notch, angleDeg));
}

/**
 * Powder in a bed of this depth, in kg per square metre.
 *
 * @example
 * bedMass(1280).toFixed(2) //=> '6.40'
 */
export function bedMass(bed: number): number {
  return (bed / TICKS_PER_MM) * MORTAR_DENSITY.value;
}

/**
 * What a bag of `bagKg` covers by the table, in square metres. A notch that is not in the table is scaled by its bed
 * from the row with the nearest bed.
 *
 * @example
 * bagCoverage({ kind: 'square', width: 2032, depth: 3048, space: 2032 }, 22.6796185).toFixed(3) //=> '6.039'
 */
export function bagCoverage(notch: Notch, bagKg: number): number {
  const { rows, bagLb } = MORTAR_COVERAGE.value;
  const bed = bedDepth(notch);
  const beds = rows.map((row) => ({ row, bed: bedDepth(squareNotch(row.notch)) }));
  const near = beds.reduce((best, next) =>
    Math.abs(next.bed - bed) < Math.abs(best.bed - bed) ? next : best,
  );
  const scale = bed > 0 ? near.bed / bed : 1;
  return near.row.plan * SQ_FT_IN_M2 * scale * (bagKg / (bagLb * LB_IN_KG));
}

/**
 * Bags for an area by the bag's coverage, not rounded: waste added, coverage cut where tiles are back-buttered.
 *
 * @example
 * mortarBags(200, 45, true).toFixed(2) //=> '6.11'
 * mortarBags(200, 65, false).toFixed(2) //=> '3.38'
 */
export function mortarBags(area: number, coverage: number, backButter: boolean): number {
  const { waste, backButter: kept } = MORTAR_WASTE.value;
  return (area * (1 + waste)) / (coverage * (backButter ? kept : 1));
}

function squareNotch([width, depth, space]: readonly [number, number, number]): Notch {
  return { kind: 'square', width: inches(width), depth: inches(depth), space: inches(space) };
}
