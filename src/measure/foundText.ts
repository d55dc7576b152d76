/**
 * What stood where a text was expected, in a form that a message may quote; never throws.
 *
 * @example foundText(12) //=> '12'
 * @example foundText(['a']) //=> '[…]'
 * @example foundText(null) //=> 'null'
 */
export function foundText(value: unknown): string {
  if (Array.isArray(value)) return '[…]';
  if (typeof value === 'object' && value !== null) return '{…}';
  return String(value);
}
