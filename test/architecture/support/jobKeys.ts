import { jsonSchema } from '../../../src/job/jsonSchema.ts';

interface Schema {
  readonly description?: string;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly items?: Schema;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly patternProperties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
}

/** Facts of an edge, which walls, obstacles, doorways and sides of doorways have alike. */
const EDGE = new Set(['meets', 'gap', 'gap max', 'touch', 'seen']);
const EDGE_OWNERS = /\.(walls\.<name>|obstacles\.<name>|doorways\.<name>(\.left|\.right)?)$/;

function keysUnder(schema: Schema, path: string): string[] {
  const { properties, patternProperties, additionalProperties } = schema;
  const below = [
    ...Object.entries(properties ?? {}),
    ...Object.values(patternProperties ?? {}).map((one) => ['from …', one] as const),
    ...(typeof additionalProperties === 'object' ? [['<name>', additionalProperties] as const] : []),
  ].flatMap(([key, one]) => {
    const own = path === '' ? key : `${path}.${key}`;
    return [own, ...keysUnder(one, own)];
  });
  const forms = [...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...(schema.items ? [schema.items] : [])];
  return [...below, ...forms.flatMap((form) => keysUnder(form, path))];
}

/** A key as it is documented: facts of edges once for all, `floors.<name>` as `floor`, pattern and border of an inlay as the floor's. */
function documented(key: string): string {
  const at = key.lastIndexOf('.');
  const [owner, last] = [key.slice(0, at), key.slice(at + 1)];
  if (EDGE.has(last) && EDGE_OWNERS.test(`.${owner}`)) return `edge.${last}`;
  return key
    .replace(/^floors\.<name>/, 'floor')
    .replace('.pattern.straight.', '.pattern.')
    .replace(/\.inlays\.<name>\.(pattern|border)\./, '.$1.');
}

/** Every key that a job file may have, such as `floor.walls.<name>.read`, each once, in the order of the schema. */
export function jobKeys(): readonly string[] {
  return [...new Set(keysUnder(jsonSchema() as Schema, '').map(documented))];
}
