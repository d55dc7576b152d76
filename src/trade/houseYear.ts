import type { Fact } from './Fact.ts';

/** A vinyl or asphalt floor put in by this year, or of unknown age, counts as asbestos until a laboratory says no. */
export const ASBESTOS_YEAR: Fact<number> = { value: 1980, mark: 'S', source: '29 CFR 1926.1101' };

/** Painted wood in homes built before this year may hold lead. */
export const LEAD_YEAR: Fact<number> = { value: 1978, mark: 'M', source: 'EPA renovation rule' };

const RESILIENT =
  /vin[iy]l|asphalt|asfalt|asf[aá]lt|lin[oó]l|linoleum|mastic|m[aá]stique|resilient|cutback|bitum/i;

/**
 * Layers of an old floor that must be tested for asbestos before they are touched. The year is that of the house,
 * undefined where unknown.
 *
 * @example
 * asbestosLayers(1957, ['carpet', 'sheet vinyl']) //=> ['sheet vinyl']
 * asbestosLayers(1999, ['sheet vinyl']) //=> []
 */
export function asbestosLayers(houseYear: number | undefined, layers: readonly string[]): readonly string[] {
  if (!mayHoldAsbestos(houseYear)) return [];
  return layers.filter((name) => RESILIENT.test(name));
}

/**
 * Whether an old floor of vinyl or asphalt may hold asbestos; yes where the year is unknown.
 *
 * @example
 * mayHoldAsbestos(undefined) //=> true
 * mayHoldAsbestos(1981) //=> false
 */
export function mayHoldAsbestos(houseYear: number | undefined): boolean {
  return houseYear === undefined || houseYear <= ASBESTOS_YEAR.value;
}

/**
 * Whether painted wood may hold lead; yes where the year is unknown.
 *
 * @example
 * mayHoldLead(undefined) //=> true
 * mayHoldLead(1978) //=> false
 */
export function mayHoldLead(houseYear: number | undefined): boolean {
  return houseYear === undefined || houseYear < LEAD_YEAR.value;
}
