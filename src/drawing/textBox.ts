import { type Box, boxRound } from './boxes.ts';
import type { FigureMark, Spot, TextMark } from './Mark.ts';
import { capHeight, mmPerPoint, textWidth } from './textWidth.ts';

/** Width of a figure in the saw's type, in mm. */
export function figureWidth(
  figure: Pick<FigureMark, 'whole' | 'numerator' | 'denominator' | 'sizes'>,
): number {
  const [whole, fraction] = figure.sizes;
  const gap = figure.whole !== '' && figure.numerator !== undefined ? ' ' : '';
  const parts = figure.numerator === undefined ? '' : `${figure.numerator}/${figure.denominator}`;
  return textWidth(figure.whole + gap, whole, 700) + textWidth(parts, fraction, 700);
}

/** Width and height in mm that a text takes before it is turned: capitals' height with a little air for descenders. */
export function textSize(text: TextMark | FigureMark): readonly [width: number, height: number] {
  if (text.mark === 'figure') return [figureWidth(text), text.sizes[0] * mmPerPoint * (capHeight + 0.08)];
  return [
    textWidth(text.text, text.size, text.weight, text.narrow),
    text.size * mmPerPoint * (capHeight + 0.22),
  ];
}

/** The box that a text covers on the paper; what the hatches keep clear of and what no other text may touch. */
export function textBox(text: TextMark | FigureMark): Box {
  const [width, height] = textSize(text);
  const shift = { start: width / 2, middle: 0, end: -width / 2 }[text.anchor];
  const [x, y] = text.at;
  const middle: Spot = text.turn === 90 ? [x, y + shift] : [x + shift, y];
  return text.turn === 90 ? boxRound(middle, height, width) : boxRound(middle, width, height);
}
