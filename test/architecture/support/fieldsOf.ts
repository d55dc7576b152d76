import { type Node, nodesIn, type Source } from './sources.ts';

/** Exported types of sources by name. */
function typesOf(sources: readonly Source[]): ReadonlyMap<string, Node> {
  const declarations = sources
    .flatMap(({ program }) => nodesIn(program))
    .filter(({ type, declaration }) => type === 'ExportNamedDeclaration' && declaration)
    .map(({ declaration }) => declaration as Node)
    .filter(({ type }) => type === 'TSInterfaceDeclaration' || type === 'TSTypeAliasDeclaration');
  return new Map(declarations.map((node) => [(node.id as Node).name as string, node]));
}

const referenceIn = (node: Node): string | undefined => {
  if (node.type === 'TSTypeReference') return (node.typeName as Node).name as string;
  return node.type === 'TSInterfaceHeritage' ? ((node.expression as Node).name as string) : undefined;
};

const fieldIn = (node: Node): string | undefined =>
  node.type === 'TSPropertySignature' ? ((node.key as Node).name as string) : undefined;

/** Names of all fields of a type and of the types it is made of, but for the types named in `without`. */
export function fieldsOf(
  root: string,
  sources: readonly Source[],
  without: readonly string[],
): readonly string[] {
  const types = typesOf(sources);
  const open = [root];
  const seen = new Set(without);
  const fields = new Set<string>();
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    const declared = types.get(name);
    if (seen.has(name) || !declared) continue;
    seen.add(name);
    for (const node of nodesIn(declared)) {
      const field = fieldIn(node);
      const reference = referenceIn(node);
      if (field) fields.add(field);
      if (reference) open.push(reference);
    }
  }
  return [...fields].sort();
}
