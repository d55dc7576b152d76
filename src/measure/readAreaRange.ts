import { plainText } from './plainText.ts';
import { type AreaReading, readArea } from './readArea.ts';

/** Two areas in square metres, the smaller first, or why there are none. */
export type AreaRange =
  | { readonly ok: true; readonly lowM2: number; readonly highM2: number }
  | Extract<AreaReading, { ok: false }>;

/**
 * An area or a range of areas with one unit, as a bag prints its coverage.
 *
 * @example readAreaRange('6-8 m2') //=> {ok: true, lowM2: 6, highM2: 8}
 * @example readAreaRange('6 m2') //=> {ok: true, lowM2: 6, highM2: 6}
 */
export function readAreaRange(value: unknown): AreaRange {
  const range =
    typeof value === 'string' ? /^([\d.]+) ?(?:-|to) ?([\d.]+) ?(\D.*)$/.exec(plainText(value)) : null;
  const low = readArea(range ? `${range[1]} ${range[3]}` : value);
  const high = range ? readArea(`${range[2]} ${range[3]}`) : low;
  if (!low.ok) return { ...low, found: range ? String(value) : low.found };
  if (!high.ok) return { ...high, found: String(value) };
  return { ok: true, lowM2: Math.min(low.areaM2, high.areaM2), highM2: Math.max(low.areaM2, high.areaM2) };
}
