import { readFont } from './readFont.ts';

const fonts = { 400: readFont(400), 700: readFont(700) };

/** Thousandths of the type size that a tabular figure takes in this font. */
const tabular = 632;

export interface SeenText {
  readonly words: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const attribute = (tag: string, name: string): string | undefined =>
  new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];

function widthOf(words: string, size: number, bold: boolean, narrow: boolean): number {
  const font = fonts[bold ? 700 : 400];
  const units = [...words].map((c) => (!narrow && /\d/.test(c) ? tabular : (font.get(c) ?? 900)));
  return (units.reduce((sum, one) => sum + one, 0) * size) / 1000;
}

/** Every line of words of an SVG as the box of its capitals, in mm, y down: measured with the font, not with our table. */
export function textsIn(svg: string): SeenText[] {
  return [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, tag, words]) => {
    const size = Number(attribute(tag!, 'font-size'));
    const width = widthOf(words!, size, tag!.includes('font-weight'), tag!.includes('proportional'));
    const anchor = attribute(tag!, 'text-anchor') ?? 'start';
    const before = { start: 0, middle: width / 2, end: width }[anchor]!;
    const turned = /translate\(([-\d.]+) ([-\d.]+)\) rotate\(-90\)/.exec(tag!);
    const [x, y] = [Number(attribute(tag!, 'x')), Number(attribute(tag!, 'y'))];
    if (!turned)
      return { words: words!, left: x - before, right: x - before + width, top: y - 0.668 * size, bottom: y };
    const [tx, ty] = [Number(turned[1]), Number(turned[2])];
    return {
      words: words!,
      left: tx + y - 0.668 * size,
      right: tx + y,
      top: ty + before - width,
      bottom: ty + before,
    };
  });
}

/** Pairs of words that lie on each other. */
export function clashes(texts: readonly SeenText[]): string[] {
  const touch = (a: SeenText, b: SeenText) =>
    a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b) => (touch(a, b) ? [`${a.words} | ${b.words}`] : [])),
  );
}

/** What is wrong with the nesting of tags, quotes or entities; empty for well-formed markup. */
export function faultsOf(svg: string): string[] {
  const open: string[] = [];
  const faults: string[] = [];
  for (const [, slash, name, attributes, self] of svg.matchAll(
    /<(\/?)([A-Za-z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g,
  )) {
    if (slash) {
      if (open.pop() !== name) faults.push(`</${name}> closes another tag`);
    } else if (!self) open.push(name!);
    const names = [...attributes!.matchAll(/([\w:-]+)="/g)].map(([, one]) => one);
    if (new Set(names).size < names.length) faults.push(`<${name}> has an attribute twice`);
  }
  const rest = svg.replace(/<\/?[A-Za-z]+(?:\s+[\w:-]+="[^"<]*")*\s*\/?>/g, '');
  if (/[<>]|&(?!amp;|lt;|gt;|quot;|#39;)/.test(rest)) faults.push('an unescaped character');
  return [...faults, ...open.map((name) => `<${name}> stays open`)];
}
