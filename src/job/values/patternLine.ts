import { bad, good, type Reader, type Reading } from '../shape/Reader.ts';

/** What a pattern is square to, as written: a wall's name, what shares the taper, or a line between two places. */
export type LineWish =
  | string
  | { readonly kind: 'shared'; readonly near?: string }
  | { readonly kind: 'sight'; readonly from: string; readonly to: string };

function read(value: unknown): Reading<LineWish> {
  const text = String(value).trim().replace(/\s+/g, ' ');
  const shared = /^shared(?: taper)?(?: near (.+))?$/i.exec(text);
  if (shared) return good({ kind: 'shared', ...(shared[1] !== undefined && { near: shared[1] }) });
  const sight = /^from (.+?) to (.+)$/i.exec(text);
  if (sight) return good({ kind: 'sight', from: sight[1]!, to: sight[2]! });
  return /^(shared|from)\b/i.test(text) ? bad('notALine') : good(text);
}

/**
 * What a pattern is square to.
 *
 * @example
 * patternLine.read('B-C').value //=> 'B-C'
 * patternLine.read('shared taper').value //=> { kind: 'shared' }
 * patternLine.read('shared taper near B-C').value //=> { kind: 'shared', near: 'B-C' }
 * patternLine.read('from hall to A-B').value //=> { kind: 'sight', from: 'hall', to: 'A-B' }
 * patternLine.read('from hall').code //=> 'notALine'
 */
export const patternLine: Reader<LineWish> = {
  read,
  standIn: '',
  json: {
    type: 'string',
    examples: ['A-B', 'shared taper', 'shared taper near B-C', 'from hall to A-B', 'from B to D'],
  },
};
