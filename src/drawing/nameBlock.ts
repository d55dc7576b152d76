import { type Box, boxRound } from './boxes.ts';
import type { Mark, Spot } from './Mark.ts';
import { text } from './text.ts';
import { textSize } from './textBox.ts';
import { mmPerPoint, textWidth } from './textWidth.ts';

/** A name that wants a place in its piece, with the number of its cut where there is one. All in mm of paper. */
export interface NameRequest {
  readonly name: string;
  readonly number?: number | undefined;
  readonly bold?: boolean;
  /** The piece on the paper, holes after the outer ring, and the spot deepest inside it. Without rings the
   *  name is led out from the spot. */
  readonly rings: readonly (readonly Spot[])[];
  readonly pole: Spot;
}

/** A name as it may be set: the room it takes and how it is drawn round a spot. */
export interface Block {
  /** Whether the number of the cut is part of it. */
  readonly numbered: boolean;
  readonly width: number;
  readonly height: number;
  readonly draw: (middle: Spot) => readonly Mark[];
}

export function blockBox({ width, height }: Block, middle: Spot): Box {
  return boxRound(middle, width, height);
}

/** Space between a name and its number's circle. */
const gap = 0.8;

function circleSize(number: number, size: number): number {
  return Math.max(textWidth(String(number), size, 700) + 1.6, size * mmPerPoint * 1.15);
}

function circled(at: Spot, number: number, size: number): readonly Mark[] {
  return [
    { mark: 'circle', centre: at, radius: circleSize(number, size) / 2, line: 'thin', fill: 'paper' },
    text(at, String(number), { size, weight: 700, clear: 'none' }),
  ];
}

/** Sets a name at a size, turned or not, its number beside or under it. */
export function block(request: NameRequest, size: number, turn: 0 | 90, stacked: boolean): Block {
  const { name, number, bold } = request;
  const weight = bold ? 700 : 400;
  const [long, high] = textSize(text([0, 0], name, { size, weight, narrow: true }));
  const words = (at: Spot) => text(at, name, { size, weight, turn, clear: 'all', narrow: true });
  const [w, h] = turn === 90 ? [high, long] : [long, high];
  if (number === undefined) return { numbered: false, width: w, height: h, draw: (at) => [words(at)] };
  const d = circleSize(number, size);
  // Under a straight name and beside a turned one is "stacked"; in line with the words is not.
  const upright = stacked === (turn === 0);
  const [width, height] = upright ? [Math.max(w, d), h + gap + d] : [w + gap + d, Math.max(h, d)];
  const draw = ([x, y]: Spot): readonly Mark[] =>
    upright
      ? [words([x, y + height / 2 - h / 2]), ...circled([x, y - height / 2 + d / 2], number, size)]
      : [words([x - width / 2 + w / 2, y]), ...circled([x + width / 2 - d / 2, y], number, size)];
  return { numbered: true, width, height, draw };
}
