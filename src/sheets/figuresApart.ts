import type { Space } from '../drawing/index.ts';
import { pageSpace } from './drawingSpace.ts';
import type { setOutFigures } from './setOutFigures.ts';

type Figures = ReturnType<typeof setOutFigures>;

/** Heights of what stands under the drawing, in mm: a mark of two lines, heads, a line of small text, one of a note beside marks, one of a stick. */
const MM = { mark: 8.2, head: 9, line: 4.3, note: 3.4, joint: 4.6 } as const;

/** Widths of the column of notes, in mm. */
const NOTES_MM = { portrait: 54, landscape: 84 } as const;

/** Joints side by side on a stick's table; letters of small text that stand on a millimetre. */
const POLE_COLUMNS = 4;
const LETTERS_A_MM = 0.66;

/** What the drawing's page holds besides, in mm: the drawing with its bars at least; bars and what stands round them, less what is kept free under the words. */
const BARS_LEAST_MM = 113;
const CHECK_MM = 9 + 2 - 8;

/** What follows the table is kept in one piece up to so much of a page: more would leave as much of the page before it empty. */
const MOST_KEPT = 0.7;

/** How much larger the type is where the figures have a page to themselves. */
const ROOMY = 1.25;

/** Lines of the table that stay with what follows it: two lines of readings are no page. */
export const LAST_LINES = 2;

/**
 * Where the figures of the set-out do best: `under` the drawing where they fit there, `apart` on a page of their own where
 * they fill no more than one in larger type, else `on` from under the drawing over several pages, what follows the table in
 * one piece with its last lines; or `through`, where that piece would leave much of a page empty before it.
 */
export function figuresApart(
  figures: Figures,
  drawing: Space & { readonly belowMm: number },
  paper: 'letter' | 'a4',
  way: 'portrait' | 'landscape',
): 'under' | 'apart' | 'on' | 'through' {
  const page = pageSpace(paper, way);
  const under = page.heightMm - Math.max(BARS_LEAST_MM, drawing.heightMm + CHECK_MM + drawing.belowMm);
  const height = (type: number, of = figures) => figuresHeight(of, page.widthMm, NOTES_MM[way], type);
  if (height(1) <= under) return 'under';
  if (height(ROOMY) <= page.heightMm) return 'apart';
  const rest = { ...figures, lines: figures.lines.slice(-LAST_LINES) };
  return height(1, rest) <= MOST_KEPT * page.heightMm ? 'on' : 'through';
}

/** Roughly how high the figures stand in type so many times as large, in mm: fewer letters stand on a line of it. */
function figuresHeight(
  { lines, soft, border, later, poles, adjusted, trueTo, noCheck }: Figures,
  widthMm: number,
  notesMm: number,
  type: number,
): number {
  const linesOf = (letters: number, wide: number) => Math.ceil((letters * type) / (wide * LETTERS_A_MM));
  const row = ({ marks, notes }: Figures['lines'][number]) =>
    Math.max(
      Math.max(1, marks.length) * MM.mark,
      notes.reduce((sum, note) => sum + linesOf(note.length, notesMm), 0) * MM.note,
    );
  const table = (rows: Figures['lines']) => rows.reduce<number>((sum, one) => sum + row(one), MM.head);
  const letters = adjusted.reduce(
    (sum, { id, read, used, correction }) => sum + `${id}${read}${used}${correction}`.length + 10,
    30,
  );
  return [
    table(lines),
    [...soft, ...border].reduce((sum, words) => sum + linesOf(words.length, widthMm) * MM.line, 0),
    trueTo ? MM.line : 0,
    ...later.map((set) => 2 * MM.line + (set.lines.length > 0 ? table(set.lines) : 0)),
    ...poles.map(({ joints }) => MM.head + Math.ceil(joints.length / POLE_COLUMNS) * MM.joint),
    noCheck ? MM.line + 2 : 0,
    linesOf(letters, widthMm) * MM.line,
  ].reduce((sum, height) => sum + height * type, 0);
}
