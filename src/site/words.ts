import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { parse } from 'yaml';

export type Figures = Readonly<Record<string, unknown>>;

/** Puts a code and its figures into words of one language. */
export type Say = (code: string, figures?: Figures) => string;

export interface Words {
  readonly languages: readonly string[];
  readonly say: (lang: string) => Say;
  readonly codes: (lang: string) => readonly string[];
  /** Whether the language has words for the code. */
  readonly has: (lang: string, code: string) => boolean;
}

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

function makeSay(lang: string, messages: Record<string, string>): Say {
  const compiled = new Map<string, IntlMessageFormat>();
  return (code, figures = {}) => {
    const text = messages[code];
    if (text === undefined)
      throw new Error(`No words for "${code}" in language "${lang}": add it to layouts/words/${lang}.yaml`);
    try {
      const message = compiled.get(code) ?? new IntlMessageFormat(text, lang, undefined, { ignoreTag: true });
      compiled.set(code, message);
      return String(message.format(figures as Record<string, string>));
    } catch (error) {
      throw new Error(
        `The words for "${code}" in language "${lang}" do not fit: ${(error as Error).message}`,
      );
    }
  };
}

/** Words from catalogues that are already read: language → flat messages. */
export function makeWords(catalogues: Readonly<Record<string, Record<string, string>>>): Words {
  const says = new Map(Object.entries(catalogues).map(([lang, messages]) => [lang, makeSay(lang, messages)]));
  return {
    languages: Object.keys(catalogues),
    codes: (lang) => Object.keys(catalogues[lang] ?? {}),
    has: (lang, code) => catalogues[lang]?.[code] !== undefined,
    say: (lang) => {
      const say = says.get(lang);
      if (!say)
        throw new Error(`No catalogue for language "${lang}": there are ${[...says.keys()].join(', ')}`);
      return say;
    },
  };
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
