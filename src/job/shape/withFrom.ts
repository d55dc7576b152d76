import * as z from 'zod';

/** Keys such as `from A-B`: the name behind `from`. */
const FROM = /^from +(\S.*)$/;

/** A map with fixed keys and any number of `from <wall>` keys. */
export type WithFrom<Shape extends z.ZodRawShape> = z.output<z.ZodObject<Shape>> &
  Readonly<Record<string, unknown>>;

/** Schema of a map that has, beside its own keys, keys that name a wall or corner: `from A-B: 15 in`. */
export function withFrom<Shape extends z.ZodRawShape>(shape: Shape, from: z.ZodType, description: string) {
  const json = z.toJSONSchema(from, { io: 'input', unrepresentable: 'any' });
  const { $schema: _, ...value } = json;
  return z
    .looseObject(shape)
    .meta({ description, additionalProperties: false, patternProperties: { '^from +\\S': value } })
    .transform((given, context): WithFrom<Shape> => {
      const read: Record<string, unknown> = { ...given };
      for (const key of Object.keys(given).filter((name) => !Object.hasOwn(shape, name))) {
        if (!FROM.test(key)) {
          context.issues.push({ code: 'unrecognized_keys', keys: [key], input: given, path: [] });
          continue;
        }
        const parsed = from.safeParse((given as Record<string, unknown>)[key]);
        if (parsed.success) read[key] = parsed.data;
        else
          for (const issue of parsed.error.issues)
            context.issues.push({ ...issue, path: [key, ...issue.path], input: given } as never);
      }
      return read as WithFrom<Shape>;
    });
}

/**
 * The `from` keys of such a map in the order written.
 *
 * @example
 * fromKeys({ circle: 1, 'from A-B': 2 }) //=> [{ key: 'from A-B', name: 'A-B', value: 2 }]
 */
export function fromKeys<T>(
  map: Readonly<Record<string, unknown>>,
): readonly { readonly key: string; readonly name: string; readonly value: T }[] {
  return Object.entries(map).flatMap(([key, value]) => {
    const name = FROM.exec(key)?.[1];
    return name === undefined ? [] : [{ key, name: name.trim(), value: value as T }];
  });
}
