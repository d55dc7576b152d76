import { lineOf, type Node, nodesIn, type Source } from './sources.ts';

/** Names of the machine that only `src/site` may speak. */
const GLOBALS = new Set([
  ...['process', 'fetch', 'performance', 'crypto', 'globalThis', 'console', 'XMLHttpRequest', 'WebSocket'],
  ...['document', 'localStorage', 'navigator', 'location', 'HTMLElement'],
  ...['setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'require', 'eval'],
]);

/** Members that ask the clock, chance or the machine's own language and time zone. */
const MEMBERS = new Set([
  ...['Math.random', 'Date.now', 'DateTime.now', 'DateTime.local', 'DateTime.utc', 'import.meta'],
  ...['Settings.defaultZone', 'Settings.defaultLocale'],
]);
const OF_THE_MACHINE =
  /^(toLocaleString|toLocaleDateString|toLocaleTimeString|toLocaleUpperCase|toLocaleLowerCase|localeCompare|getHours|getMinutes|getDate|getDay|getMonth|getFullYear|getTimezoneOffset)$/;

const name = (node: unknown): string => ((node as Node | undefined)?.name as string) ?? '';

/** Nodes that are the name of a property and no reference: `a.process`, `{ process: 1 }`. */
function propertyNames(program: Node): Set<Node> {
  return new Set(
    nodesIn(program).flatMap((node) => {
      if (node.type === 'MemberExpression' && !node.computed) return [node.property as Node];
      return 'key' in node && !node.computed ? [node.key as Node] : [];
    }),
  );
}

function impurity(node: Node): string | undefined {
  if (node.type === 'MetaProperty') return 'import.meta';
  if (node.type === 'NewExpression' && name(node.callee) === 'Date')
    return (node.arguments as unknown[]).length === 0 ? 'new Date()' : undefined;
  if (node.type === 'CallExpression' && name(node.callee) === 'Date') return 'Date()';
  if (node.type !== 'MemberExpression') return undefined;
  const member = `${name(node.object)}.${name(node.property)}`;
  if (MEMBERS.has(member)) return member;
  return OF_THE_MACHINE.test(name(node.property)) ? name(node.property) : undefined;
}

/** Each place where a source asks for files, clock, chance, processes or the habits of the machine. */
export function impurities({ path, text, program }: Source): string[] {
  const properties = propertyNames(program);
  return nodesIn(program).flatMap((node) => {
    const global = node.type === 'Identifier' && GLOBALS.has(name(node)) && !properties.has(node);
    const found = global ? name(node) : impurity(node);
    return found ? [`${path}:${lineOf(text, node.start)} ${found}`] : [];
  });
}
