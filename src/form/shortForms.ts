import type { Path } from '../job/shape/Trouble.ts';

type Map = Readonly<Record<string, unknown>>;

const isMap = (value: unknown): value is Map =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const ABOVE = /^(.*?)\s+above\s+(.*)$/i;

/** Things that may be written shortly, by their own key or that of their list, as the keys they have in full: `9 ft` as a wall is its `read`. */
const inFull: Readonly<Record<string, (value: unknown) => Map | undefined>> = {
  walls: (value) => ({ read: value }),
  diagonals: (value) => ({ read: value }),
  cracks: (value) => ({ is: value }),
  film: (value) => ({ kind: value }),
  heights: (value) => {
    const found = typeof value === 'string' ? ABOVE.exec(value) : null;
    return found ? { height: found[1]!, above: found[2]! } : undefined;
  },
  'corner checks': (value) => {
    const [legs, read] = typeof value === 'string' ? value.split('=') : [];
    return legs !== undefined && read !== undefined ? { legs: legs.trim(), read: read.trim() } : undefined;
  },
};

const short: Readonly<Record<string, readonly [key: string, ...more: readonly string[]]>> = {
  walls: ['read'],
  diagonals: ['read'],
  cracks: ['is'],
  film: ['kind'],
  heights: ['height', 'above'],
};

function formFor<T>(forms: Readonly<Record<string, T>>, path: Path): T | undefined {
  const [list, own] = [String(path.at(-2)), String(path.at(-1))];
  return Object.hasOwn(forms, list) ? forms[list] : Object.hasOwn(forms, own) ? forms[own] : undefined;
}

/**
 * What stands at a path as a map; undefined where it is none and stands for none.
 *
 * @example
 * fullForm(['floor', 'walls', 'A-B'], ['9 ft', '9 ft 1 in']) //=> { read: ['9 ft', '9 ft 1 in'] }
 * fullForm(['base', 'heights', 'flange'], '1/4 in above vinyl') //=> { height: '1/4 in', above: 'vinyl' }
 */
export function fullForm(path: Path, value: unknown): Map | undefined {
  if (value === undefined || value === null) return {};
  return isMap(value) ? value : formFor(inFull, path)?.(value);
}

/**
 * How a map is written most shortly at its path: a height as `1/4 in above vinyl`; undefined where only a map holds it all.
 *
 * @example
 * shortForm(['base', 'heights', 'flange'], { height: '1/4 in', above: 'vinyl' }) //=> '1/4 in above vinyl'
 */
export function shortForm(path: Path, map: Map): unknown {
  const keys = formFor(short, path);
  if (!keys || Object.keys(map).length !== keys.length || keys.some((key) => !Object.hasOwn(map, key)))
    return undefined;
  const [first, second] = keys;
  return second === undefined ? map[first] : `${map[first]} ${second} ${map[second]}`;
}
