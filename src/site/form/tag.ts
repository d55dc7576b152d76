import { escapeXml } from '../../drawing/escapeXml.ts';

/** Attributes of an element; those that are `undefined` or `false` are left out, `true` stands alone. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

const childless = new Set(['input', 'br']);

/**
 * An element as HTML. Attributes are escaped, what stands in it is HTML already.
 *
 * @example
 * tag('label', { for: 'a' }, 'A') //=> '<label for="a">A</label>'
 * tag('input', { id: 'a', required: true, disabled: false }) //=> '<input id="a" required>'
 */
export function tag(name: string, attributes: Attributes, ...content: readonly string[]): string {
  const written = Object.entries(attributes).map(([key, value]) => {
    if (value === undefined || value === false) return '';
    return value === true ? ` ${key}` : ` ${key}="${escapeXml(String(value))}"`;
  });
  const open = `<${name}${written.join('')}>`;
  return childless.has(name) ? open : `${open}${content.join('')}</${name}>`;
}

/** Words as HTML. */
export const plain = escapeXml;
