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

/** New layers under the tile and its bed, from the base up: the tile is the last, the bed under it goes with the tile. */
export function layersUnder({ fresh }: Pick<BaseSpec, 'fresh'>): readonly Layer[] {
  const under = fresh.slice(0, -1);
  const bed = under.at(-1);
  return bed && isSpread(bed) ? under.slice(0, -1) : under;
}
