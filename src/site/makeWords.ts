import { IntlMessageFormat } from 'intl-messageformat';

export type Figures = Readonly<Record<string, unknown>>;

/** Puts a code and its figures into words of one language. */
export type Say = (code: string, figures?: Figures) => string;

export interface Words {
  readonly languages: readonly string[];
  readonly say: (lang: string) => Say;
  readonly codes: (lang: string) => readonly string[];
  /** The words of a code before figures are put in. */
  readonly message: (lang: string, code: string) => string;
  /** Whether the language has words for the code. */
  readonly has: (lang: string, code: string) => boolean;
}

/** A full stop after an abbreviated hour, which has its own: `3 p. m..` */
const ABBREVIATED = /([ap]\.\s?m\.)\.(?!\.)/g;

function makeSay(lang: string, messages: Record<string, string>): Say {
  const compiled = new Map<string, IntlMessageFormat>();
  return (code, figures = {}) => {
    const text = messages[code];
    if (text === undefined)
      throw new Error(`No words for "${code}" in language "${lang}": add it to layouts/words/${lang}.yaml`);
    try {
      const message = compiled.get(code) ?? new IntlMessageFormat(text, lang, undefined, { ignoreTag: true });
      compiled.set(code, message);
      return String(message.format(figures as Record<string, string>)).replace(ABBREVIATED, '$1');
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
    message: (lang, code) => catalogues[lang]?.[code] ?? '',
    has: (lang, code) => catalogues[lang]?.[code] !== undefined,
    say: (lang) => {
      const say = says.get(lang);
      if (!say)
        throw new Error(`No catalogue for language "${lang}": there are ${[...says.keys()].join(', ')}`);
      return say;
    },
  };
}
