import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { parseSync } from 'vite';

export const ROOT = join(import.meta.dirname, '..', '..', '..');

/** A node of the syntax tree; only what the checks ask of it. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/** A file of `src` as the checks see it. */
export interface Source {
  /** Path from `src`, with slashes: `geometry/side.ts`. */
  readonly path: string;
  readonly folder: string;
  readonly text: string;
  readonly program: Node;
  /** Files of `src` that it imports or re-exports, types included, as paths from `src`. */
  readonly imports: readonly string[];
  /** Packages and `node:` modules that it imports. */
  readonly packages: readonly string[];
  readonly exports: readonly string[];
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** The nodes directly below a node. */
export function below(node: Node): Node[] {
  return Object.values(node).flatMap((value) =>
    (Array.isArray(value) ? value : [value]).filter((child): child is Node => isNode(child)),
  );
}

/** A node and all below it. */
export function nodesIn(node: Node): Node[] {
  const found = [node];
  for (let i = 0; i < found.length; i++) found.push(...below(found[i]!));
  return found;
}

export const lineOf = (text: string, at: number): number => text.slice(0, at).split('\n').length;

function importsOf(program: Node): string[] {
  return nodesIn(program).flatMap((node) => {
    const source = node.source as Node | null | undefined;
    return isNode(source) && typeof source.value === 'string' ? [source.value] : [];
  });
}

/** A source from its path and its text. */
export function readSource(path: string, text: string): Source {
  const { program, module, errors } = parseSync(path, text);
  if (errors.length > 0) throw new SyntaxError(`${path}: ${errors[0]!.message}`);
  const named = importsOf(program as unknown as Node).sort();
  const here = join('/', dirname(path));
  return {
    path,
    folder: path.split('/')[0]!,
    text,
    program: program as unknown as Node,
    imports: named.filter((name) => name.startsWith('.')).map((name) => relative('/', resolve(here, name))),
    packages: named.filter((name) => !name.startsWith('.')),
    exports: module.staticExports.flatMap(({ entries }) =>
      entries.map(({ exportName }) => exportName.name ?? (exportName.kind === 'Default' ? 'default' : '*')),
    ),
  };
}

/** Every file of `src` that is ours to read as code; declarations of plain JavaScript are not. */
export function readSources(): readonly Source[] {
  const folder = join(ROOT, 'src');
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|mjs)$/.test(name) && !name.endsWith('.d.ts'))
    .sort()
    .map((name) => readSource(name, readFileSync(join(folder, name), 'utf8')));
}
