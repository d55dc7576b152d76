import type { Row } from '../../../src/cuts/Cut.ts';
import { printLength, type System } from '../../../src/measure/index.ts';

/** Says which rows do not close, in ticks or as printed. An empty list is a pass. */
export function judgeRows(rows: readonly Row[], system: System): string[] {
  return rows.flatMap((row) => {
    const length = Math.abs(row.to[0] - row.from[0]) + Math.abs(row.to[1] - row.from[1]);
    const exact = row.terms.reduce((sum, term) => sum + term.exact, 0);
    const saw = row.terms.reduce((sum, term) => sum + term.saw, 0);
    const text = row.terms.map((term) => printed(term.saw, system));
    const read = text.reduce((sum, word) => sum + readBack(word), 0);
    const closes = Math.abs(read - readBack(printed(length, system))) < 1e-6;
    const whole = row.terms.every((term) => Number.isInteger(term.saw) && term.saw >= 0);
    return exact === length && saw === length && closes && whole
      ? []
      : [`${row.id}: ${length} but ${exact}, ${saw}, ${text.join(' + ')}`];
  });
}

/** A length as a sheet prints it in a row: floored to 1/64 in or 0.1 mm, no unit. */
export function printed(ticks: number, system: System): string {
  return printLength(ticks, system, { unit: false, round: 'down' });
}

/** Reads `7 5/8` or `289.5` back, as a number, without any of the program's own reading. */
export function readBack(text: string): number {
  return text.split(' ').reduce((sum, word) => {
    const [above, below] = word.split('/').map(Number);
    return sum + (below === undefined ? above! : above! / below);
  }, 0);
}

/** A row as one line of text: sizes as printed, joints left out. */
export function rowText(row: Row, system: System = 'inches'): string {
  return row.terms
    .filter(({ what }) => what !== 'joint')
    .map(({ saw }) => printed(saw, system))
    .join(' + ');
}
