import type { Problem } from '../job/Problem.ts';
import type { Words } from './words.ts';

/** One line for one problem: place, what was found, what was expected, the way out. */
export function problemLine(problem: Problem, words: Words, lang: string): string {
  const place = [problem.file, problem.line, problem.column].filter((part) => part !== undefined).join(':');
  const figures = { found: problem.found, path: problem.path.join('.'), ...problem.figures };
  const say = words.say(lang);
  const code = `problem.${problem.code}`;
  const keys = words.has(lang, code) ? [code] : [`${code}.found`, `${code}.expected`, `${code}.fix`];
  const known = keys.filter((key) => words.has(lang, key));
  // A problem without words still has to be seen, so that its code and what was found stand in for them.
  const sentences =
    known.length > 0 ? known.map((key) => say(key, figures)) : [`${problem.code}: ${problem.found}`];
  return `${place ? `${place}: ` : ''}${sentences.join(' ')}`;
}
