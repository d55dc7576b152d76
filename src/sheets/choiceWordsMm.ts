import { textWidth } from '../drawing/index.ts';

/** All that stands on the page of a choice but its two drawings, as it is printed. */
export interface ChoiceWords {
  readonly how: string;
  readonly key: readonly string[];
  readonly rows: readonly { readonly name: string; readonly values: readonly string[] }[];
  /** In the type of the figures, and in small bold type; empty where there is nothing to say. */
  readonly large: readonly string[];
  readonly small: readonly string[];
  readonly answer: string;
  /** Answers with a box to tick each. */
  readonly boxes: readonly string[];
}

/** Type in points, and how much wider words are printed at most than they are reckoned, as lines break at spaces. */
const POINTS = { text: 12, key: 11, small: 9 } as const;
const WIDER = 1.06;

/** A line of each type; what stands round a paragraph, a row, an answer; a box, a swatch; in mm. */
const LINE_MM = { text: 5.5, key: 5, small: 4.2, box: 7 } as const;
const ROUND_MM = { paragraph: 1.6, row: 2.3, answer: 2, table: 3.2 } as const;
const BOX_MM = 8;
const SWATCH_MM = 14;
/** Names of the drawings, head of the table, line to sign with what stands round it, and what is left free; in mm. */
const FIXED_MM = 5.5 + 6.3 + 9.2 + 3;

/** Columns of the table as shares of the page: the question, and an answer each; what a cell has beside its words, in mm. */
const COLUMNS = [0.44, 0.28, 0.28] as const;
const CELL_MM = 3;

/**
 * How high the words of a choice stand on a page so wide, in mm: as many lines as they take by the table of widths.
 *
 * @example
 * Math.round(choiceWordsMm({ how: '', key: [], rows: [], large: [], small: [], answer: '', boxes: ['Yes', 'No'] }, 184)) //=> 54
 */
export function choiceWordsMm(words: ChoiceWords, widthMm: number): number {
  const text = (one: string, weight: 400 | 700 = 400) => lines(one, POINTS.text, weight, widthMm);
  const paragraph = (one: string) => (one === '' ? 0 : text(one) * LINE_MM.text + ROUND_MM.paragraph);
  const small = (one: string) =>
    one === '' ? 0 : lines(one, POINTS.small, 700, widthMm) * LINE_MM.small + ROUND_MM.paragraph;
  const keyed = textWidth(words.key.join(' · '), POINTS.key, 400) + words.key.length * SWATCH_MM;
  const key = Math.ceil((keyed * WIDER) / widthMm) * LINE_MM.key + ROUND_MM.paragraph;
  const box = (one: string) => lines(one, POINTS.text, 400, widthMm - BOX_MM) * LINE_MM.box;
  const answers = [text(words.answer, 700) * LINE_MM.text, ...words.boxes.map(box)];
  const parts = [
    ...[words.how, ...words.large].map(paragraph),
    ...words.small.map(small),
    ...words.rows.map((row) => rowMm(row, widthMm)),
    ...answers.map((one) => one + ROUND_MM.answer),
  ];
  return parts.reduce((sum, one) => sum + one, key + ROUND_MM.table + FIXED_MM);
}

function rowMm({ name, values }: ChoiceWords['rows'][number], widthMm: number): number {
  const cells = [name, ...values].map((words, k) =>
    lines(words, POINTS.text, k === 0 ? 700 : 400, (COLUMNS[k] ?? 1) * widthMm - CELL_MM),
  );
  return Math.max(...cells) * LINE_MM.text + ROUND_MM.row;
}

function lines(words: string, points: number, weight: 400 | 700, widthMm: number): number {
  return Math.max(1, Math.ceil((textWidth(words, points, weight) * WIDER) / widthMm));
}
