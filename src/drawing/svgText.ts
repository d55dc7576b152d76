import { escapeXml } from './escapeXml.ts';
import type { FigureMark, TextMark } from './Mark.ts';
import { roundMm } from './roundMm.ts';
import { capHeight, mmPerPoint } from './textWidth.ts';

/** Attributes that put the base line `drop` mm under the middle of the words, turned or not. */
function place({ at, turn, anchor }: TextMark | FigureMark, height: number, drop: number): string {
  const [x, y] = [at[0], height - at[1]];
  const where =
    turn === 90
      ? `transform="translate(${roundMm(x)} ${roundMm(y)}) rotate(-90)" y="${roundMm(drop)}"`
      : `x="${roundMm(x)}" y="${roundMm(y + drop)}"`;
  return anchor === 'start' ? where : `${where} text-anchor="${anchor}"`;
}

/** A line of words as an SVG element on a drawing `height` mm high. */
export function svgText(mark: TextMark, height: number): string {
  const size = mark.size * mmPerPoint;
  const bold = mark.weight === 700 ? ' font-weight="700"' : '';
  const where = place(mark, height, (size * capHeight) / 2);
  const narrow = mark.narrow ? ' style="font-variant-numeric: proportional-nums"' : '';
  return `<text ${where} font-size="${roundMm(size)}"${bold}${narrow}>${escapeXml(mark.text)}</text>`;
}

/** A size in the saw's type. The numerator is raised by the difference of the figures' heights, the rest stands on the line. */
export function svgFigure(mark: FigureMark, height: number): string {
  const whole = mark.sizes[0] * mmPerPoint;
  const small = mark.sizes[1] * mmPerPoint;
  const lift = roundMm((whole - small) * capHeight);
  const gap = mark.whole !== '' && mark.numerator !== undefined ? ' ' : '';
  const part = (words: string, dy: string) =>
    `<tspan font-size="${roundMm(small)}" dy="${dy}">${escapeXml(words)}</tspan>`;
  const fraction =
    mark.numerator === undefined
      ? ''
      : part(mark.numerator, `-${lift}`) + part(`/${mark.denominator ?? ''}`, lift);
  const where = place(mark, height, (whole * capHeight) / 2);
  return `<text ${where} font-size="${roundMm(whole)}" font-weight="700" xml:space="preserve">${escapeXml(mark.whole)}${gap}${fraction}</text>`;
}
