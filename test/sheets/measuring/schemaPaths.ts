type Node = Readonly<Record<string, unknown>>;

const asNode = (value: unknown): Node => (typeof value === 'object' && value !== null ? (value as Node) : {});
const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Keys of a map in a JSON Schema: those by name, `from ` where a pattern allows such keys, `<name>` where any name goes. */
function below(node: Node): readonly (readonly [string, Node])[] {
  const named = Object.entries(asNode(node.properties));
  const patterned = Object.values(asNode(node.patternProperties)).map((one) => ['from <>', one] as const);
  const free = node.additionalProperties;
  const any = typeof free === 'object' && free !== null ? [['<name>', free] as const] : [];
  return [...named, ...patterned, ...any].map(([key, value]) => [key, asNode(value)] as const);
}

function walk(node: Node, path: readonly string[]): readonly (readonly string[])[] {
  const forms = [...asList(node.anyOf), ...asList(node.oneOf), ...asList(node.allOf)].map(asNode);
  const keys = below(node);
  const here = keys.length === 0 && forms.length === 0 ? [path] : [];
  return [
    ...here,
    ...keys.flatMap(([key, value]) => walk(value, [...path, key])),
    ...forms.flatMap((form) => walk(form, path)),
  ];
}

/** The path of every value that a JSON Schema allows, once each. */
export function allPaths(schema: unknown): readonly (readonly string[])[] {
  const all = walk(asNode(schema), []).map((path) => path.join('/'));
  return [...new Set(all)].map((path) => path.split('/'));
}

/** Whether a path with placeholders means this path of the schema; `<wall>` is a name, `from <corner>` a key from a corner. */
export function matches(inSchema: readonly string[], path: readonly string[]): boolean {
  const same = (one: string, other: string) =>
    one === other ||
    (one === '<name>' && other.startsWith('<')) ||
    (one === 'from <>' && other.startsWith('from '));
  return inSchema.length === path.length && path.every((key, i) => same(inSchema[i]!, key));
}
