/** How a mark looks, as SVG writes it: what drawings of one page say again and again. */
const looks =
  /^(?:fill|stroke|stroke-width|stroke-dasharray|stroke-linecap|font-size|font-weight|text-anchor|xml:space)$/;

/** The style of an attribute. A size of type has no unit in SVG, and needs one in a style. */
function styleOf([name, value]: readonly [string, string]): string {
  if (name === 'xml:space') return 'white-space:pre';
  return `${name}:${value}${name === 'font-size' ? 'px' : ''}`;
}

/**
 * Drawings that stand on one page, with the looks of their marks told once for all of them: a class in place of each set of
 * attributes, and the styles of these classes. They look as before.
 *
 * @example sharedStyles(['<path fill="none" stroke="#000" d="m0,0h9"/>']) //=> { styles: '.s0{fill:none;stroke:#000}', drawings: ['<path class="s0" d="m0,0h9"/>'] }
 */
export function sharedStyles(drawings: readonly string[]): {
  readonly styles: string;
  readonly drawings: readonly string[];
} {
  const classes = new Map<string, string>();
  const classOf = (style: string): string => {
    const own = classes.get(style) ?? `s${classes.size.toString(36)}`;
    classes.set(style, own);
    return own;
  };
  const tag = (all: string, name: string, attributes: string, end: string) => {
    const each = [...attributes.matchAll(/ ([\w:-]+)="([^"]*)"/g)];
    const [look, rest] = [true, false].map((is) => each.filter(([, key]) => looks.test(key!) === is));
    if (look!.length === 0) return all;
    const style = look!.map(([, key, value]) => styleOf([key!, value!])).join(';');
    return `<${name} class="${classOf(style)}"${rest!.map(([text]) => text).join('')}${end}>`;
  };
  const written = drawings.map((svg) => svg.replace(/<(path|text|tspan)((?: [\w:-]+="[^"]*")*)(\/?)>/g, tag));
  return {
    styles: [...classes].map(([style, own]) => `.${own}{${style}}`).join(''),
    drawings: written,
  };
}
