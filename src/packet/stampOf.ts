/** Letters and digits that cannot be misread for one another on wet paper. */
const ALPHABET = '23456789ACDEFHJKLMNPRTUVWXY';

/**
 * Six characters made from the content of a job, so that two papers of the same revision that differ are told apart.
 *
 * Not a secret and not a signature: a 32-bit FNV-1a hash, run twice from two seeds.
 *
 * @example
 * stampOf('a') === stampOf('a') //=> true
 * stampOf('a') === stampOf('b') //=> false
 * stampOf('a').length //=> 6
 */
export function stampOf(content: string): string {
  const high = fnv1a(content, 0x811c9dc5);
  const low = fnv1a(content, 0x01000193);
  let number = (high % 0x200000) * 0x100000000 + low;
  let stamp = '';
  for (let i = 0; i < 6; i++) {
    stamp += ALPHABET[number % ALPHABET.length];
    number = Math.floor(number / ALPHABET.length);
  }
  return stamp;
}

function fnv1a(content: string, seed: number): number {
  let hash = seed;
  for (let i = 0; i < content.length; i++) {
    hash = Math.imul(hash ^ content.charCodeAt(i), 0x01000193);
  }
  return hash >>> 0;
}
