import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './sources.ts';

export interface Document {
  readonly name: string;
  readonly text: string;
}

/** Files that are built or written by a command, and the name of a format: they may be named without being there. */
const BUILT =
  /^(tile-job-packet\/\d|jobs\/my-job\/.*|output\/.*|packet\.json|cuts\.csv|(crew|templates|owner|office|packet|measuring)\.pdf|index\.html|(<\w+>|\w[\w-]*)\.html|\.cache\/.*)$/;

export const documents: readonly Document[] = ['README.md', 'DEVELOPERS.md'].map((name) => ({
  name,
  text: readFileSync(join(ROOT, name), 'utf8'),
}));

export const developers = documents[1]!.text;

/** Blocks between fences of one kind. */
export const blocks = (text: string, kind: string): string[] =>
  [...text.matchAll(/^```(\w*)\n([\s\S]*?)^```/gm)]
    .filter((match) => match[1] === kind)
    .map((match) => match[2]!);

const withoutBlocks = (text: string): string => text.replace(/^```[\s\S]*?^```/gm, '');

/** What stands between backticks outside of blocks. */
export const quoted = (text: string): string[] =>
  [...withoutBlocks(text).matchAll(/`([^`\n]+)`/g)].map((match) => match[1]!);

/** Whether a text between backticks is a path of the project: it has a slash and no blank, or ends as files do. */
function isPath(text: string): boolean {
  if (/[\s<>=()${}|:]/.test(text) || /^\d/.test(text) || text.startsWith('@')) return false;
  return (
    /^\.?[\w-]+(\/|$)/.test(text) && (text.includes('/') || /\.(ts|mjs|njk|md|json|ya?ml|css)$/.test(text))
  );
}

/** Whether a path is there; a star stands for any part of one name. */
export function isThere(path: string): boolean {
  const at = path.indexOf('*');
  if (at < 0) return existsSync(join(ROOT, path));
  const folder = path.slice(0, path.lastIndexOf('/', at) + 1);
  const [before, after = ''] = path.slice(folder.length).split('*');
  const names = existsSync(join(ROOT, folder)) ? readdirSync(join(ROOT, folder)) : [];
  return names.some((name) => name.startsWith(before!) && name.endsWith(after));
}

/** Paths of the project that a text names between backticks. */
export const pathsNamed = (text: string): string[] =>
  quoted(text)
    .map((one) => one.replace(/\/$/, ''))
    .filter((one) => isPath(one) && !BUILT.test(one));

/** Targets of links and pictures that lead into the project. */
export const linksOf = (text: string): string[] =>
  [...text.matchAll(/\]\(([^)#\s]+)[^)]*\)/g)]
    .map((match) => match[1]!)
    .filter((target) => !/^[a-z]+:/.test(target));

/** Scripts that a text tells to run: `npm start`, `npm test`, `npm run x`. */
export const scriptsNamed = (text: string): string[] =>
  [...text.matchAll(/\bnpm (?:run ([\w:-]+)|(start|test)\b)/g)].map((match) => (match[1] ?? match[2])!);

/** A part of a text under a heading, up to the next heading of the same level or a higher one. */
export function section(text: string, heading: string): string {
  const lines = text.split('\n');
  const start = lines.findIndex((line) => new RegExp(`^#+ ${heading}$`).test(line));
  if (start < 0) throw new Error(`There is no heading "${heading}".`);
  const level = /^#+/.exec(lines[start]!)![0].length;
  const rest = lines.slice(start + 1);
  const end = rest.findIndex((line) => (/^(#+) /.exec(line)?.[1]?.length ?? 9) <= level);
  return (end < 0 ? rest : rest.slice(0, end)).join('\n');
}

/** Rows of the tables of a text, as their cells; heads and rules are left out. */
export const rowsOf = (text: string): string[][] =>
  text
    .split('\n')
    .filter(
      (line, i, all) =>
        /^\|/.test(line) && !/^\|[\s:|-]+$/.test(line) && !/^\|[\s:|-]+$/.test(all[i + 1] ?? ''),
    )
    .map((line) =>
      line
        .slice(1, -1)
        .split(/(?<!\\)\|/)
        .map((cell) => cell.trim()),
    );
