/**
 * Any text as a CSS string, quotes included: all but letters, digits and spaces is written as a code point, so
 * that nothing in it can end the string, the rule or the style element.
 *
 * @example
 * cssString('Sink & tub') //=> '"Sink \\26  tub"'
 */
export function cssString(text: string): string {
  const safe = text.replace(/[^A-Za-z0-9 ]/gu, (char) => `\\${char.codePointAt(0)?.toString(16)} `);
  return `"${safe}"`;
}
