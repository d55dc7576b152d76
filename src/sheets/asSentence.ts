/**
 * Words with a capital letter in front, for a sentence that begins with a name.
 *
 * @example asSentence('face of tub runs off.') //=> 'Face of tub runs off.'
 */
export function asSentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
