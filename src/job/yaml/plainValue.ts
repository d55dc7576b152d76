import { type Document, isAlias, isMap, isScalar, isSeq, type Node } from 'yaml';

/** More values than any job has; a file that repeats its own parts without end is stopped here. */
const MOST_VALUES = 100_000;
const DEEPEST = 40;

function scalarValue(value: unknown, source: string | undefined): unknown {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return value;
  // `0417` and `41.50` keep their spelling: a lot number loses its zero as a number.
  if (typeof value === 'number') return source === undefined || String(value) === source ? value : source;
  return source ?? '';
}

function define(map: Record<string, unknown>, key: string, value: unknown): void {
  Object.defineProperty(map, key, { value, enumerable: true, writable: true, configurable: true });
}

/** The values of a document without YAML's own classes; undefined when it is too large or goes round in a circle. */
export function plainValue(doc: Document): { readonly value: unknown } | undefined {
  let count = 0;
  const walk = (node: unknown, depth: number): unknown => {
    count += 1;
    if (count > MOST_VALUES || depth > DEEPEST) throw new RangeError('too large');
    const target = isAlias(node) ? (node.resolve(doc) as Node | undefined) : node;
    if (isSeq(target)) return target.items.map((item) => walk(item, depth + 1));
    if (isMap(target)) {
      const map: Record<string, unknown> = {};
      for (const { key, value } of target.items) define(map, keyText(key), walk(value, depth + 1));
      return map;
    }
    return isScalar(target) ? scalarValue(target.value, target.source) : null;
  };
  try {
    return { value: walk(doc.contents, 0) };
  } catch {
    return undefined;
  }
}

/** A key as text; `1` and `yes` are names like any other. */
export function keyText(key: unknown): string {
  return isScalar(key) ? (key.source ?? String(key.value)) : String(key ?? '');
}
