import type { Row, RowTerm } from '../cuts/Cut.ts';
import { sawDown, sawNearest, type Ticks } from '../measure/index.ts';

/** The terms of a row and its length as they are printed, in ticks. */
export interface PrintedRow {
  readonly terms: readonly RowTerm[];
  readonly room: Ticks;
}

/**
 * A row in steps that a tape is read to: the room down to a step, the space before its first joint and all other gaps to the nearest one,
 * and the last gap what is left, so that the row adds up to the room and neither end is further off than a step. Tiles and joints stay
 * as they measure, so that only where these are finer than a step the last gap is.
 *
 * @param step the saw step in ticks.
 */
export function printedRow({ terms }: Row, step: Ticks): PrintedRow {
  const room = sawDown(
    terms.reduce((sum, { saw }) => sum + saw, 0),
    step,
  );
  const gaps = terms.flatMap(({ what }, i) => (what === 'gap' ? [i] : []));
  const last = gaps.at(-1);
  const saws = terms.map(({ what, saw }, i) => {
    if (what !== 'gap') return saw;
    return i === last ? 0 : sawNearest(i === 0 ? gapBeside(terms[0]!, terms[1]) : saw, step);
  });
  const rest = () => room - saws.reduce((sum, saw) => sum + saw, 0);
  const wanted = last === undefined ? 0 : gapBeside(terms[last]!, terms[last - 1]);
  // Where rounding left nothing for the last gap, or more than a step less than there is, the others give a step back.
  for (const i of gaps)
    if (i !== last && saws[i]! >= step && (rest() < 0 || wanted - rest() > step)) saws[i] = saws[i]! - step;
  if (gaps[0] !== last && rest() - wanted > step) saws[gaps[0]!] = saws[gaps[0]!]! + step;
  if (last !== undefined) saws[last] = Math.max(0, rest());
  return { terms: terms.map((term, i) => ({ ...term, saw: saws[i]! })), room };
}

/** What a gap truly is with what its piece lost to the saw. */
function gapBeside(gap: RowTerm, piece: RowTerm | undefined): Ticks {
  return gap.exact + (piece ? piece.exact - piece.saw : 0);
}
