import type { Say } from './SheetView.ts';

/** Kinds of things that stand in a room or come out of it, by a word in their names, in any language of the job file. */
const KINDS: readonly (readonly [kind: string, word: RegExp])[] = [
  ['flange', /\b(?:flange|brida|flange do vaso)\b/i],
  ['toilet', /\b(?:toilet|wc|inodoro|vaso)\b/i],
  ['dishwasher', /\b(?:dishwasher|lavavajillas|lavaplatos|lava-louças)\b/i],
  ['cabinet', /\b(?:cabinet|cupboard|gabinete|mueble|armário)\b/i],
  ['vanity', /\b(?:vanity|tocador)\b/i],
  ['sink', /\b(?:sink|basin|lavabo|fregadero|pia)\b/i],
  ['tub', /\b(?:tub|bathtub|bañera|tina|banheira)\b/i],
  ['pipe', /\b(?:pipe|tubo|tubería|cano)\b/i],
  ['column', /\b(?:column|columna|coluna)\b/i],
  ['island', /\b(?:island|isla|ilha)\b/i],
  ['drain', /\b(?:drain|desagüe|ralo)\b/i],
  ['hearth', /\b(?:hearth|chimenea|lareira)\b/i],
];

/**
 * A thing by its kind in the sheet's language and, beside it, by the name that the job file and the drawings have for it; the name
 * alone where it holds the word already, or is of no kind that is known.
 */
export function sayKind(say: Say, name: string): string {
  const kind = KINDS.find(([, word]) => word.test(name))?.[0];
  if (kind === undefined) return name;
  const word = say(`thing.${kind}`);
  // Whole words, as `isla` begins `island`.
  const named = name.toLowerCase().split(/[^\p{L}]+/u);
  return word.split(' ').some((part) => named.includes(part.toLowerCase())) ? name : `${word} (${name})`;
}
