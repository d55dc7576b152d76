import { below, lineOf, type Node, type Source } from './sources.ts';

export interface Sized {
  /** `layout/makeLayout.ts makeLayout`. */
  readonly name: string;
  readonly lines: number;
}

const FUNCTIONS = new Set(['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression']);

const nameOf = (node: Node | undefined): string | undefined => {
  const named = (node?.id ?? node?.key) as Node | undefined;
  return typeof named?.name === 'string' ? named.name : undefined;
};

/** Every function of a source with its lines from first to last; a nameless one bears the name of what holds it. */
export function functionsOf({ path, text, program }: Source): Sized[] {
  const walk = (node: Node, holder: string): Sized[] => {
    const name = nameOf(node) ?? holder;
    const own = FUNCTIONS.has(node.type)
      ? [{ name: `${path} ${name}`, lines: lineOf(text, node.end) - lineOf(text, node.start) + 1 }]
      : [];
    return [...own, ...below(node).flatMap((child) => walk(child, name))];
  };
  return walk(program, '');
}
