import type { Ground } from '../frame/Ground.ts';
import type { AxisStart, Candidate, Rival } from '../Layout.ts';
import { AXES } from './Choice.ts';
import { SAME_SHIFT } from './rank.ts';
import type { Scored } from './StartQuestion.ts';

/** Starts whose tiles are counted at most: those with most whole tiles first, which are likeliest to take fewer. */
const MOST = 12;

/**
 * Starts that were laid beside the chosen one and are nearly as good in all that comes before tiles: no more slivers, the smallest piece
 * in sight and the balance worse by no more than the tolerances for tiles, corners no harder, walls within their own tolerances.
 */
export function rivalsOf(
  chosen: Scored,
  laid: readonly Scored[],
  { tolerance }: Pick<Ground, 'tolerance'>,
): readonly Rival[] {
  const share = chosen.candidate.smallestShare * (tolerance.tiles / Math.max(1, chosen.candidate.smallest));
  const isNear = ({ candidate, choice }: Scored) =>
    (tolerance.balance > 0 || AXES.every((axis) => isOpen(chosen.choice[axis]) || !isOpen(choice[axis]))) &&
    candidate.smallestShare >= chosen.candidate.smallestShare - share &&
    candidate.shift <= chosen.candidate.shift + tolerance.balance + SAME_SHIFT &&
    isNoHarder(candidate, chosen.candidate) &&
    isAsGoodAtWalls(candidate, chosen.candidate, tolerance);
  return laid
    .filter((one) => one !== chosen && isNear(one))
    .sort((one, other) => other.candidate.whole - one.candidate.whole)
    .slice(0, MOST)
    .map(({ candidate, choice: { along, across } }) => ({ along, across, chosen: candidate }));
}

/** Whether a start balances no run on an axis: it may lie a little to either side. */
function isOpen({ what }: AxisStart): boolean {
  return what === 'searched';
}

const FAULTS = ['slivers', 'thin', 'underHalf', 'webFaults', 'hardCuts'] as const;

function isNoHarder(one: Candidate, than: Candidate): boolean {
  return FAULTS.every((count) => (one[count] ?? 0) <= (than[count] ?? 0));
}

function isAsGoodAtWalls(one: Candidate, than: Candidate, { strips, halves }: Ground['tolerance']): boolean {
  if (!one.walls || !than.walls) return true;
  return one.walls.strips <= than.walls.strips + strips && one.walls.halves <= than.walls.halves + halves;
}
