import { cardSpace, type Space, textWidth } from '../drawing/index.ts';
import { wordLines } from './wordLines.ts';

/** The largest drawing that a card holds, and those that take the place of two, in mm. */
export interface CardRoom {
  readonly single: Space;
  readonly doubles: readonly Space[];
  /** How high the words beside the drawing may stand on each of them over its foot, in mm; a low card grows with its words. */
  readonly heads?: { readonly single: number; readonly doubles: readonly number[] };
}

/** A low card: how high it is at least, what stands round its drawing, and how wide that may be, in mm. */
export const LOW_CARD = { leastMm: 55.6, roundMm: 1.1, widthMm: 66 } as const;

/** A low card holds no drawing in the place of two. */
export const lowRoom: CardRoom = {
  single: { heightMm: LOW_CARD.leastMm - LOW_CARD.roundMm, widthMm: LOW_CARD.widthMm },
  doubles: [],
};

/** A drawing that is wide or tall in the place of two; the column beside a drawing, over which the foot reaches too; in mm. */
const [WIDE_MM, TALL_MM, BESIDE_MM] = [154, 128, 16] as const;

/** The height of a card inside its edge, and of one in the place of two that stand one over the other, in mm. */
const [INSIDE_MM, INSIDE_TALL_MM] = [71.3, 147.1] as const;

/** What a card has under its drawing whatever stands there, in mm. */
const FOOT_MM = 13.3;

/**
 * The room of a card: less where its pieces and the words beside them take more of its foot than is kept for them.
 *
 * @param notes what stands after the pieces, in each language of the crew.
 */
export function roomOf(pieces: readonly string[], notes: readonly string[]): CardRoom {
  const moreMm = (widthMm: number) => Math.max(0, footMm(pieces, notes, widthMm + BESIDE_MM) - FOOT_MM);
  const { widthMm, heightMm } = cardSpace;
  const foot = (own: number) => footMm(pieces, notes, own + BESIDE_MM, SMALL_MM);
  return {
    single: { widthMm, heightMm: heightMm - moreMm(widthMm) },
    doubles: [
      { widthMm: WIDE_MM, heightMm: heightMm - moreMm(WIDE_MM) },
      { widthMm, heightMm: TALL_MM - moreMm(widthMm) },
    ],
    heads: {
      single: INSIDE_MM - foot(widthMm),
      doubles: [INSIDE_MM - foot(WIDE_MM), INSIDE_TALL_MM - foot(widthMm)],
    },
  };
}

/** Names of pieces and words in points; a row of pieces, a line of words, what a piece has beside its name; in mm. */
const [NAME_POINTS, WORD_POINTS] = [12, 9] as const;
const [ROW_MM, LINE_MM, GAP_MM] = [8, 4.2, 1] as const;
/** A line of small words as it is printed, in mm. */
const SMALL_MM = 3.7;
const [BOX_MM, APART_MM] = [8, 6] as const;

/** The least width of words that stand beside the last pieces; with less they go under them, in mm. */
const WORDS_MM = 45;

function footMm(
  pieces: readonly string[],
  notes: readonly string[],
  widthMm: number,
  lineMm: number = LINE_MM,
): number {
  let [rows, long] = [1, 0];
  for (const piece of pieces) {
    const wide = BOX_MM + textWidth(piece, NAME_POINTS) + APART_MM;
    if (long > 0 && long + wide > widthMm) [rows, long] = [rows + 1, 0];
    long += wide;
  }
  const piecesMm = rows * (ROW_MM + GAP_MM) - GAP_MM;
  if (notes.length === 0) return piecesMm;
  const isBeside = widthMm - long >= WORDS_MM;
  const wordsMm = lineMm * wordLines(notes.join(' '), WORD_POINTS, isBeside ? widthMm - long : widthMm);
  return isBeside ? piecesMm + Math.max(0, wordsMm - ROW_MM) : piecesMm + GAP_MM + wordsMm;
}

/** What a low card tells beside its drawing: what its cut is called, how many pieces it names, and what stands after them. */
export interface LowWords {
  readonly called: string;
  readonly pieces: number;
  readonly notes: readonly string[];
}

/** The number of a cut and its count, one under the other; the column beside a drawing; what stands between its words; in mm. */
const [NUMBER_MM, COLUMN_MM, BETWEEN_MM] = [22.1, 16, 1] as const;

/** How high the words beside a drawing stand under the number of their cut, one under the other, in mm. */
export function headMm(words: readonly string[]): number {
  const said = words.filter((one) => one !== '');
  const lines = said.map((one) => wordLines(one, WORD_POINTS, COLUMN_MM) * SMALL_MM + BETWEEN_MM);
  return lines.reduce((sum, one) => sum + one, NUMBER_MM);
}

/** The column of a low card, its number and its count with what stands round them; in mm. */
const [LOW_COLUMN_MM, NUMBERED_MM] = [20, 24.5] as const;

/** How high the words of a low card stand, one under the other, in mm. */
export function lowWordsMm({ called, pieces, notes }: LowWords): number {
  const lines = (words: string) => wordLines(words, WORD_POINTS, LOW_COLUMN_MM) * SMALL_MM;
  const told = notes.reduce((sum, note) => sum + lines(note), 0);
  return NUMBERED_MM + lines(called) + pieces * (ROW_MM + GAP_MM) + (told > 0 ? told + GAP_MM : 0);
}
