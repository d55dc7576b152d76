import type { Fact } from './Fact.ts';

/** A vinyl or asphalt floor put in by this year, or of unknown age, counts as asbestos until a laboratory says no. */
export const ASBESTOS_YEAR: Fact<number> = { value: 1980, mark: 'S', source: '29 CFR 1926.1101' };

/** Painted wood in homes built before this year may hold lead. */
export const LEAD_YEAR: Fact<number> = { value: 1978, mark: 'M', source: 'EPA renovation rule' };

/** What a resilient floor, its glue and its felt are called, in the languages of the job file, without accents. */
const RESILIENT =
  /vin[iy]l|asphalt|asfalt|bitum|\btar\b|alquitr|linol|\blino\b|cushion(?:ed)?[ -]?floor|(?:suelo|piso) (?:acolchad|almofadad)|resilient|\bsheet (?:goods|floor)|\bV[AC]T\b|masti[cq]|cutback|\bglue\b|adhesiv|adesivo|pegamento|\bcola\b|asbest|amiant/i;

/** What a layer is called that is known to hold none: carpet, wood, and ceramic tile, stone or concrete with their mortar. */
const HARMLESS =
  /carpet|\brugs?\b|alfombra|moqueta|tapete|alcatifa|wood|\b(?:oak|pine|fir|maple|bamboo|osb|boards|sub-?floor|joists)\b|floor-?boards|parquet|parque\b|tarima|madera|madeira|\btacos?\b|contrachapad|contraplacad|compensado|ceramic|porcel|azulejo|\bgres\b|terra-?cotta|quarry tile|stone|piedra|pedra|marble|marmol|marmore|granit|\bslate\b|pizarra|ardosia|brick|ladrillo|tijolo|concrete|hormigon|concreto|mortar|mortero|argamassa|screed|mud bed|contrapiso|betonilha/i;

/** What says that a name tells the look of a layer only, or more layers than one. */
const DOUBT = /\b(?:look|effect|imita\w*|over|sobre|felt|fieltro|feltro|paper|papel|tipo)\b/i;

/**
 * Layers of an old floor that must be tested for asbestos before they are touched: resilient ones, and those whose name tells
 * nobody what they are. The year is that of the house, undefined where unknown.
 *
 * @example
 * asbestosLayers(1957, ['carpet', 'lino', 'old tile']) //=> ['lino', 'old tile']
 * asbestosLayers(1999, ['sheet vinyl']) //=> []
 */
export function asbestosLayers(houseYear: number | undefined, layers: readonly string[]): readonly string[] {
  if (!mayHoldAsbestos(houseYear)) return [];
  return layers.filter((name) => isResilient(name) || !isHarmless(name));
}

/**
 * Whether a layer is of vinyl, asphalt or their like, or the glue of one, by its name.
 *
 * @example isResilient('cushioned floor') //=> true
 * @example isResilient('old tile') //=> false
 */
export function isResilient(name: string): boolean {
  return RESILIENT.test(withoutAccents(name));
}

function isHarmless(name: string): boolean {
  const plain = withoutAccents(name);
  return HARMLESS.test(plain) && !DOUBT.test(plain);
}

/**
 * A name without its accents, as lists of words know it.
 *
 * @example withoutAccents('argamassa de hormigón') //=> 'argamassa de hormigon'
 */
export function withoutAccents(name: string): string {
  return name.normalize('NFD').replace(/\p{M}/gu, '');
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
