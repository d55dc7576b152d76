import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { type Figures, makeWords, type Words } from './makeWords.ts';

export type { Figures, Say, Words } from './makeWords.ts';
export { makeWords } from './makeWords.ts';

/**
 * Keys of a nested catalogue, joined by dots.
 *
 * @example
 * flattenKeys({ site: { title: 'Jobs' } }) //=> { 'site.title': 'Jobs' }
 */
export function flattenKeys(tree: Figures, before = ''): Record<string, string> {
  const pairs = Object.entries(tree).flatMap(([key, value]) =>
    value !== null && typeof value === 'object'
      ? Object.entries(flattenKeys(value as Figures, `${before}${key}.`))
      : [[`${before}${key}`, String(value ?? '')]],
  );
  return Object.fromEntries(pairs);
}

/** Reads the catalogues of a folder: `<lang>.yaml`, and `<part>.<lang>.yaml` for parts of one. */
export function readWords(folder: string): Words {
  const catalogues: Record<string, Record<string, string>> = {};
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  for (const name of files.sort()) {
    const lang = name.split('.').at(-2) ?? '';
    const tree = parse(readFileSync(join(folder, name), 'utf8')) ?? {};
    catalogues[lang] = { ...catalogues[lang], ...flattenKeys(tree) };
  }
  return makeWords(catalogues);
}
