import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { parseDocument } from 'yaml';
import { flattenKeys } from '../../src/site/words.ts';

export const ROOT = join(import.meta.dirname, '..', '..');
const FOLDER = join(ROOT, 'layouts', 'words');

/** One file of words: `trade.es.yaml` is part `trade` of language `es`, `es.yaml` its part without a name. */
export interface WordFile {
  readonly name: string;
  readonly part: string;
  readonly lang: string;
  readonly words: Readonly<Record<string, string>>;
  /** What the YAML reader complains of, such as a key that stands twice. */
  readonly faults: readonly string[];
}

export const wordFiles: readonly WordFile[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const parts = name.split('.');
    const document = parseDocument(readFileSync(join(FOLDER, name), 'utf8'));
    return {
      name,
      part: parts.slice(0, -2).join('.'),
      lang: parts.at(-2)!,
      words: flattenKeys((document.toJS() ?? {}) as Record<string, unknown>),
      faults: [...document.errors, ...document.warnings].map(({ message }) => message),
    };
  });

export const languages = [...new Set(wordFiles.map(({ lang }) => lang))];

/** All words of one language under their keys. */
export const wordsOf = (lang: string): Readonly<Record<string, string>> =>
  Object.assign({}, ...wordFiles.filter((file) => file.lang === lang).map(({ words }) => words));

interface Element {
  readonly type: number;
  readonly value?: string;
  readonly options?: Readonly<Record<string, { readonly value: readonly Element[] }>>;
}

/** Number of an element that is plain text, and of one that chooses by a word. */
const TEXT = 0;
const SELECT = 5;

/** What a message asks for: `count`, and for a choice by words `near(other,yes)`. Plural forms differ by language. */
function figuresIn(elements: readonly Element[]): string[] {
  return elements.flatMap(({ type, value, options }) => {
    if (type === TEXT || value === undefined) return [];
    const choice = type === SELECT ? `(${Object.keys(options ?? {}).sort()})` : '';
    return [value + choice, ...Object.values(options ?? {}).flatMap((option) => figuresIn(option.value))];
  });
}

/** Figures that a message needs, sorted, each once; throws where it isn't a message. */
export function figuresOf(message: string, lang: string): string[] {
  const format = new IntlMessageFormat(message, lang, undefined, { ignoreTag: true });
  return [...new Set(figuresIn(format.getAst() as unknown as Element[]))].sort();
}
