import { likelyFigures } from '../shape/likely.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';

/**
 * One of a few words, in small or capital letters.
 *
 * @example
 * oneOf(['dry', 'wet']).read('Wet') //=> { ok: true, value: 'wet' }
 * oneOf(['dry', 'wet']).read('wett').figures //=> { allowed: 'dry, wet', near: 'yes', likely: 'wet' }
 */
export function oneOf<Word extends string>(words: readonly Word[]): Reader<Word> {
  return {
    read: (value) => {
      const given = String(value).trim().toLowerCase();
      const word = words.find((candidate) => candidate.toLowerCase() === given);
      if (word !== undefined) return good(word);
      return bad('notOneOf', { allowed: words.join(', '), ...likelyFigures(given, words) });
    },
    standIn: words[0]!,
    json: { enum: words },
  };
}
