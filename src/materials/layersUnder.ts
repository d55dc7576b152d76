import type { BaseSpec, Layer } from '../job/Job.ts';
import { BOND_COAT_MOST, inches } from '../trade/index.ts';

/** What a layer is called where it is spread and not laid in pieces. */
const SPREAD = /\b(?:mortar|thin-?set|adhesive|mortero|adhesivo|argamassa)\b/i;

/** What a layer is called that is poured or floated and cures by itself, in the languages of the job file. */
const CAST =
  /\b(?:mud|screeds?|slop(?:e|ed|ing)|pre-?slop(?:e|ed)|(?:self-?)?level(?:l?ers?|l?ing)|float(?:ed|ing)?|toppings?|concrete|recrecidos?|soleras?|pendientes?|(?:auto)?nivel\w*|regulariz\w*|contrapisos?|caimentos?|betonilhas?|hormig[oó]n|concreto)\b/i;

/**
 * Whether a layer is spread as a bond coat and not laid in pieces, nor poured or floated, by its name.
 *
 * @example isSpread({ name: 'mortar under tile' }) //=> true
 * @example isSpread({ name: 'sloped mortar' }) //=> false
 * @example isSpread({ name: 'membrane' }) //=> false
 */
export function isSpread({ name }: Pick<Layer, 'name'>): boolean {
  return SPREAD.test(name) && !isNamedCast(name);
}

/**
 * Whether a layer under the tile's bed is poured or floated and cures by itself before the next one: by its name, or as mortar that is
 * thicker than a bond coat.
 *
 * @example isCast({ name: 'mud bed', thickness: 10160 }) //=> true
 * @example isCast({ name: 'mortar', thickness: 10160 }) //=> true
 * @example isCast({ name: 'mortar', thickness: 1016 }) //=> false
 */
export function isCast({ name, thickness }: Pick<Layer, 'name' | 'thickness'>): boolean {
  return isNamedCast(name) || (isSpread({ name }) && thickness > inches(BOND_COAT_MOST.value));
}

/** A board, a mat or a tray of foam comes in pieces, whatever else its name says. */
function isNamedCast(name: string): boolean {
  return CAST.test(name) && !BONDED.test(name) && !PIECES.test(name);
}

const PIECES = /\b(?:foam|tray|pan|panels?|mats?|kit|bandeja|espuma|paneles)\b/i;

/** What a layer is called that is laid in mortar, and what tells that it sticks by itself or is rolled on. */
const BONDED = /\b(?:membranes?|membranas?|boards?|backerboards?|tableros?|placas?|painel|manta)\b/i;
const ALONE =
  /\b(?:self|peel|liquid|rolled|painted|loose|screwed|wood|osb|plywood|particle|gypsum|autoadhesiv[ao]|l[ií]quid[ao]|madera|madeira)\b/i;

/**
 * Whether a layer is bonded with mortar to what lies under it, by its name: a membrane or a board, but for one that sticks by itself,
 * is rolled on or is wood.
 *
 * @example isBonded({ name: 'membrane' }) //=> true
 * @example isBonded({ name: 'liquid membrane' }) //=> false
 */
export function isBonded({ name }: Pick<Layer, 'name'>): boolean {
  return BONDED.test(name) && !ALONE.test(name) && !isSpread({ name });
}

/** New layers under the tile and its bed, from the base up: the tile is the last, the bed under it goes with the tile. */
export function layersUnder({ fresh }: Pick<BaseSpec, 'fresh'>): readonly Layer[] {
  const under = fresh.slice(0, -1);
  const bed = under.at(-1);
  return bed && isSpread(bed) ? under.slice(0, -1) : under;
}
