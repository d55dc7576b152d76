/**
 * Names of a job's fields that the file itself gives, so that a sheet can tell a product's own figure from our default.
 *
 * @example
 * statedFields({ bag: 20, colour: undefined }, { bag: 'bagKg', colour: 'colour' }) //=> ['bagKg']
 */
export function statedFields(
  given: Readonly<Record<string, unknown>> | undefined,
  fields: Readonly<Record<string, string>>,
): readonly string[] {
  return Object.entries(fields).flatMap(([key, field]) => (given?.[key] === undefined ? [] : [field]));
}
