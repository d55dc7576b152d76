import type { Path } from './Trouble.ts';

/** A node of a JSON Schema. */
export type JsonSchema = Readonly<Record<string, unknown>>;

function options(schema: JsonSchema): readonly JsonSchema[] {
  const any = schema.anyOf as readonly JsonSchema[] | undefined;
  return any ? any.flatMap(options) : [schema];
}

function below(schema: JsonSchema, key: string | number): readonly JsonSchema[] {
  if (typeof key === 'number') return schema.items ? options(schema.items as JsonSchema) : [];
  const properties = (schema.properties ?? {}) as Readonly<Record<string, JsonSchema>>;
  if (Object.hasOwn(properties, key)) return options(properties[key]!);
  const patterns = Object.entries((schema.patternProperties ?? {}) as Readonly<Record<string, JsonSchema>>);
  const match = patterns.find(([pattern]) => new RegExp(pattern).test(key));
  if (match) return options(match[1]);
  const rest = schema.additionalProperties;
  return typeof rest === 'object' && rest !== null ? options(rest as JsonSchema) : [];
}

/** All forms that the schema allows at a path. */
export function schemasAt(schema: JsonSchema, path: Path): readonly JsonSchema[] {
  return path.reduce<readonly JsonSchema[]>(
    (at, key) => at.flatMap((node) => below(node, key)),
    options(schema),
  );
}

/** The keys that a map at a path may have; `from A-B` stands for all keys that begin so. */
export function keysAt(schema: JsonSchema, path: Path): readonly string[] {
  return schemasAt(schema, path).flatMap((node) => [
    ...Object.keys((node.properties ?? {}) as object),
    ...(node.patternProperties ? ['from A-B'] : []),
  ]);
}
