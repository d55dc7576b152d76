import { type Document, isAlias, isMap, isSeq, type Node } from 'yaml';
import type { Path } from '../shape/Trouble.ts';
import { keyText } from './plainValue.ts';

/** Where a path leads in the text: as deep as the text goes. `complete` is false where the path goes on. */
export interface NodeAt {
  readonly key?: Node;
  readonly node?: Node;
  readonly complete: boolean;
}

function resolved(doc: Document, node: unknown): unknown {
  return isAlias(node) ? node.resolve(doc) : node;
}

function step(doc: Document, at: unknown, name: string | number): { key?: Node; node?: Node } | undefined {
  const target = resolved(doc, at);
  if (isSeq(target)) {
    const item = typeof name === 'number' ? target.items[name] : undefined;
    return item ? { node: item as Node } : undefined;
  }
  if (!isMap(target)) return undefined;
  const pair = target.items.findLast(({ key }) => keyText(key) === String(name));
  return pair ? { key: pair.key as Node, node: (pair.value ?? undefined) as Node | undefined } : undefined;
}

/** Follows a path through a document. */
export function nodeAt(doc: Document, path: Path): NodeAt {
  let at: { key?: Node; node?: Node } = { node: (doc.contents ?? undefined) as Node | undefined };
  for (const name of path) {
    const next = step(doc, at.node, name);
    if (!next) return { ...at, complete: false };
    at = { key: next.key ?? at.key, node: next.node };
  }
  return { ...at, complete: true };
}
