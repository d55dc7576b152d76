import { type JsonSchema, schemasAt } from './schemasAt.ts';
import type { Path } from './Trouble.ts';

function mayBeLeftOut(schema: JsonSchema, path: Path, key: string): boolean {
  const required = schemasAt(schema, path).some((node) => ((node.required ?? []) as string[]).includes(key));
  const at = schemasAt(schema, [...path, key]);
  const known = schemasAt(schema, path).some((node) => Object.hasOwn((node.properties ?? {}) as object, key));
  const takesNull = at.some((node) => ((node.type ?? []) as string | string[]).includes('null'));
  return known && !required && !takesNull;
}

/** A key of the form that was left blank counts as not written, where it may be left out. */
export function dropBlanks(value: unknown, schema: JsonSchema, path: Path = []): unknown {
  if (Array.isArray(value)) return value.map((item, index) => dropBlanks(item, schema, [...path, index]));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key, item]) => item !== null || !mayBeLeftOut(schema, path, key))
      .map(([key, item]) => [key, dropBlanks(item, schema, [...path, key])]),
  );
}
