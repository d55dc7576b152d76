type Map = Readonly<Record<string, unknown>>;

const isMap = (value: unknown): value is Map =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const ABOVE = /^(.*?)\s+above\s+(.*)$/i;

/** A thing of a list that is written shortly, as the keys it would have in full: `9 ft` as a wall is its `read`. */
const inFull: Readonly<Record<string, (value: unknown) => Map | undefined>> = {
  walls: (value) => ({ read: value }),
  diagonals: (value) => ({ read: value }),
  heights: (value) => {
    const found = typeof value === 'string' ? ABOVE.exec(value) : null;
    return found ? { height: found[1]!, above: found[2]! } : undefined;
  },
  'corner checks': (value) => {
    const [legs, read] = typeof value === 'string' ? value.split('=') : [];
    return legs !== undefined && read !== undefined ? { legs: legs.trim(), read: read.trim() } : undefined;
  },
};

/**
 * A thing of the list `what` as a map; undefined where it is none and stands for none.
 *
 * @example
 * fullForm('walls', ['9 ft', '9 ft 1 in']) //=> { read: ['9 ft', '9 ft 1 in'] }
 * fullForm('heights', '1/4 in above vinyl') //=> { height: '1/4 in', above: 'vinyl' }
 */
export function fullForm(what: string, value: unknown): Map | undefined {
  if (value === undefined || value === null) return {};
  return isMap(value) ? value : inFull[what]?.(value);
}

/**
 * How a thing whose keys are known is written most shortly: a height as `1/4 in above vinyl`; undefined where only a map holds
 * it all.
 *
 * @example
 * shortForm('heights', { height: '1/4 in', above: 'vinyl' }) //=> '1/4 in above vinyl'
 */
export function shortForm(what: string, map: Map): unknown {
  const keys = Object.keys(map);
  const only = (...wanted: readonly string[]) =>
    keys.length === wanted.length && wanted.every((key) => keys.includes(key));
  if (what === 'heights' && only('height', 'above')) return `${map.height} above ${map.above}`;
  return (what === 'walls' || what === 'diagonals') && only('read') ? map.read : undefined;
}
