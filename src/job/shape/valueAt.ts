import type { Path } from './Trouble.ts';

/**
 * The value at a path; undefined where there is none.
 *
 * @example
 * valueAt({ a: [1, 2] }, ['a', 1]) //=> 2
 */
export function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((at, key) => {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    return (at as Record<string | number, unknown>)[key];
  }, value);
}

/**
 * The same value without what stands at a path.
 *
 * @example
 * without({ a: 1, b: 2 }, ['b']) //=> { a: 1 }
 */
export function without(value: unknown, path: Path): unknown {
  const [key, ...rest] = path;
  if (key === undefined || typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    const items = rest.length > 0 ? value.map((item, i) => (i === key ? without(item, rest) : item)) : value;
    return rest.length > 0 ? items : items.filter((_, i) => i !== key);
  }
  const pairs = Object.entries(value).filter(([name]) => rest.length > 0 || name !== String(key));
  return Object.fromEntries(
    pairs.map(([name, item]) => [name, name === String(key) ? without(item, rest) : item]),
  );
}
