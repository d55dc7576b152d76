import { lineOf, type Node, nodesIn, type Source } from './sources.ts';

const COMPARISONS = new Set(['<', '>', '<=', '>=', '===', '!==', '==', '!=']);

const isProduct = (node: Node): boolean => node.type === 'BinaryExpression' && node.operator === '*';
const bare = (node: Node): Node =>
  node.type === 'ParenthesizedExpression' ? bare(node.expression as Node) : node;

/** `a * b - c * d`, the cross product of two arrows written out. */
function isCross(node: Node): boolean {
  const { type, operator, left, right } = bare(node);
  return (
    type === 'BinaryExpression' &&
    operator === '-' &&
    isProduct(bare(left as Node)) &&
    isProduct(bare(right as Node))
  );
}

/** Names that a source gives to a cross product. */
const crossNames = (program: Node): Set<string> =>
  new Set(
    nodesIn(program)
      .filter(({ type, init }) => type === 'VariableDeclarator' && init && isCross(init as Node))
      .map(({ id }) => (id as Node).name as string),
  );

/** Each place where a source compares a cross product with zero, or takes its sign. */
export function sidesAsked({ path, text, program }: Source): string[] {
  const names = crossNames(program);
  const cross = (node: Node) =>
    isCross(node) || (bare(node).type === 'Identifier' && names.has(bare(node).name as string));
  const zero = (node: Node) => bare(node).type === 'Literal' && bare(node).value === 0;
  return nodesIn(program).flatMap((node) => {
    const [left, right] = [node.left as Node, node.right as Node];
    const compares =
      node.type === 'BinaryExpression' &&
      COMPARISONS.has(node.operator as string) &&
      ((cross(left) && zero(right)) || (zero(left) && cross(right)));
    const callee = node.callee as Node | undefined;
    const signs =
      node.type === 'CallExpression' &&
      (callee?.property as Node | undefined)?.name === 'sign' &&
      (node.arguments as Node[]).some(cross);
    return compares || signs ? [`${path}:${lineOf(text, node.start)}`] : [];
  });
}
