import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './catalogues.ts';

/** A file that may say words, with its text. */
export interface Speaker {
  readonly path: string;
  readonly text: string;
}

const read = (folder: string, ends: RegExp): Speaker[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => ends.test(name))
    .map((name) => ({ path: join(folder, name), text: readFileSync(join(ROOT, folder, name), 'utf8') }));

export const templates: readonly Speaker[] = read('layouts', /\.njk$/);
export const speakers: readonly Speaker[] = [...read('src', /\.(ts|mjs)$/), ...templates];

/** Keys that a text asks for by their full name: `t('site.date')`, `say('gate.base')`, `sayIn(lang, 'site.page')`. */
export function keysAsked(text: string): string[] {
  const call = /\b(?:t|t2|say(?:\([\w.]+\))?|sayIn)\(\s*(?:[\w.]+,\s*)?'([\w-]+(?:\.[\w-]+)+)'\s*[,)]/g;
  return [...text.matchAll(call)].map((match) => match[1]!);
}

/** A key that is made while the program runs; each group stands for a part that is put in. */
export type MadeKey = RegExp;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\-]/g, '\\$&');
const madeOf = (parts: readonly string[]): MadeKey => new RegExp(`^${parts.map(escaped).join('(.+)')}$`);

/** Keys that a text makes: `sheet.${name}.title` between backticks, `'site.bundle.' + name`, `key + 'Fields'`. */
export function keysMade(text: string): MadeKey[] {
  const literals = [...text.matchAll(/`([a-z][\w-]*\.[^`\s]*\$\{[^`]*)`/g)].map((match) =>
    madeOf(match[1]!.split(/\$\{[^}]*\}/)),
  );
  const sums = [...text.matchAll(/'([a-z][\w-]*\.[\w.-]*)' \+ [\w.]+(?: \+ '([^']*)')?/g)].map(
    ([, head, tail]) => madeOf([head!, tail ?? '']),
  );
  return [...literals, ...sums];
}

/** Words that a text holds in quotation marks or as the name of a property; a made key is put together of these. */
export const wordsHeld = (text: string): string[] =>
  [...text.matchAll(/['"`]([\w-]+(?:[. ][\w-]+)*)['"`]|(?:^|[{,(]\s*)([a-z]\w*)\??:/gm)].map(
    (match) => (match[1] ?? match[2])!,
  );
