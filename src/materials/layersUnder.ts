import type { BaseSpec, Layer } from '../job/Job.ts';

/** What a layer is called where it is spread and not laid in pieces. */
const SPREAD = /\b(?:mortar|thin-?set|adhesive|mortero|adhesivo|argamassa)\b/i;

/**
 * Whether a layer is spread and not laid in pieces, by its name.
 *
 * @example isSpread({ name: 'mortar under tile' }) //=> true
 * @example isSpread({ name: 'membrane' }) //=> false
 */
export function isSpread({ name }: Pick<Layer, 'name'>): boolean {
  return SPREAD.test(name);
}

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
