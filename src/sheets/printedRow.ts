import type { Row, RowTerm } from '../cuts/Cut.ts';
import { sawDown, sawNearest, type Ticks } from '../measure/index.ts';

/** The terms of a row and its length as they are printed, in ticks. */
export interface PrintedRow {
  readonly terms: readonly RowTerm[];
  readonly room: Ticks;
}

/**
 * A row in steps that a tape is read to: the room down to a step, gaps to the nearest one, and the last gap what is left, so that the row
 * adds up to the room and neither gap is further off than a step. Tiles and joints stay as they measure, so that only where these are
 * finer than a step the last gap is.
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
  const saws = terms.map(({ what, saw }, i) =>
    what === 'gap' ? (i === last ? 0 : sawNearest(saw, step)) : saw,
  );
  const rest = () => room - saws.reduce((sum, saw) => sum + saw, 0);
  // Where rounding up left nothing for the last gap, or more than a step less than there is, the others give a step back.
  const short = () => rest() < 0 || (terms[last!]?.saw ?? 0) - rest() > step;
  for (const i of gaps) if (i !== last && saws[i]! >= step && short()) saws[i] = saws[i]! - step;
  if (last !== undefined) saws[last] = Math.max(0, rest());
  return { terms: terms.map((term, i) => ({ ...term, saw: saws[i]! })), room };
}
