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

/**
 * The same value with another in the place of a path; a missing key is added.
 *
 * @example
 * withValue({ a: { b: 1 } }, ['a', 'c'], 2) //=> { a: { b: 1, c: 2 } }
 */
export function withValue(value: unknown, path: Path, put: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return put;
  if (Array.isArray(value)) return value.map((item, i) => (i === key ? withValue(item, rest, put) : item));
  if (typeof value !== 'object' || value === null) return value;
  const inner = valueAt(value, [key]);
  return Object.fromEntries([
    ...Object.entries(value).filter(([name]) => name !== String(key)),
    [key, withValue(inner, rest, put)],
  ]);
}
