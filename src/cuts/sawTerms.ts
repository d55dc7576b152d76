import { sawNearest, type Ticks } from '../measure/index.ts';
import type { RowTerm } from './Cut.ts';
import { keepSaw } from './measureFrom.ts';
import type { ExactTerm } from './rowTerms.ts';

/**
 * A row as it is printed: pieces sawn along it down to the saw step, whole tiles and joints to the nearest of the printed grid, and what
 * that takes off added to the gaps. The first gap lies on the grid too and the last takes the rest, so the printed sum is the
 * printed length.
 *
 * @param grid 1/64 in or 0.1 mm in ticks.
 */
export function sawTerms(terms: readonly ExactTerm[], step: Ticks, grid: Ticks): RowTerm[] {
  const last = terms.length - 1;
  let drift = 0;
  const saws = terms.map((term, i): Ticks => {
    if (term.sawn) return Math.max(0, keepSaw(term.exact, step));
    if (i === 0 || i === last) return 0;
    const saw = sawNearest(term.exact, grid);
    // A long row of equal tiles drifts off by what each was rounded; one that is a grid step more or less brings it back.
    const late = Math.abs(drift + saw - term.exact) > step;
    const set = late ? saw - Math.sign(drift) * grid : saw;
    drift += set - term.exact;
    return set;
  });
  const next = terms[1]!;
  // What whole tiles and joints were rounded by goes to both gaps alike, what a cut loses to the gap beside it.
  const first = terms[0]!.exact - drift / 2 + (next.sawn ? next.exact - saws[1]! : 0);
  saws[0] = Math.max(0, sawNearest(Math.round(first), grid));
  return closed(terms, saws, grid);
}

/** Gives the rest to the last gap; where a rest would be missing there, it is taken in grid steps from the terms before. */
function closed(terms: readonly ExactTerm[], saws: Ticks[], grid: Ticks): RowTerm[] {
  const last = saws.length - 1;
  const total = terms.reduce((sum, { exact }) => sum + exact, 0);
  let rest = total - saws.reduce((sum, saw) => sum + saw, 0);
  for (let i = 0; rest < 0; i = (i + 1) % last) {
    if (saws[i]! < grid) continue;
    saws[i] = saws[i]! - grid;
    rest += grid;
  }
  saws[last] = rest;
  return terms.map(({ what, id, exact }, i) => ({ what, id, exact, saw: saws[i]! }));
}
