import type { Point } from '../../geometry/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Candidate } from '../Layout.ts';
import { AXES, type Choice } from './Choice.ts';
import type { NearStarts } from './nearStarts.ts';
import type { Scored } from './StartQuestion.ts';

/** Steps either way at most. */
const MOST_STEPS = 8;

const COUNTS = ['slivers', 'thin', 'underHalf', 'hardCuts'] as const;

/**
 * A start moved by saw steps so that fewer webs beside an opening are too thin, where the smallest piece in sight becomes less by no more
 * than the tolerance for tiles, and nothing else that comes before webs becomes worse. An axis on which it balances a run stays.
 */
export function withoutWebs(
  best: Scored,
  { tolerance, flat }: Pick<Ground, 'tolerance' | 'flat'>,
  { beside }: Pick<NearStarts, 'beside'>,
  lay: (choice: Choice) => Scored,
): Scored {
  const { candidate, choice } = best;
  const steps = Math.min(MOST_STEPS, Math.floor(tolerance.tiles / (2 * flat)));
  if (candidate.webFaults === 0 || steps === 0) return best;
  const share = candidate.smallestShare * (tolerance.tiles / Math.max(1, candidate.smallest));
  const moves = AXES.flatMap((axis, on): Point[] => {
    if (choice[axis].what !== 'searched') return [];
    const by = Array.from({ length: 2 * steps + 1 }, (_, i) => (i - steps) * 2 * flat);
    return by.filter((move) => move !== 0).map((move) => (on === 0 ? [move, 0] : [0, move]));
  });
  const found = moves
    .flatMap((by) => beside(choice.origin, by) ?? [])
    .map(lay)
    .filter((one) => one.candidate.smallestShare >= candidate.smallestShare - share)
    .filter((one) => isFreed(one.candidate, candidate))
    .sort(byWebs)[0];
  return found ? withReason(found, candidate) : best;
}

/** Of starts that are laid the one without webs that are too thin whose smallest piece is largest: what it would cost to be rid of them. */
export function webPrice(chosen: Scored, laid: readonly Scored[]): readonly Candidate[] {
  return laid
    .filter((one) => isFreed(one.candidate, chosen.candidate))
    .sort(byWebs)
    .slice(0, 1)
    .map((one) => withReason(one, chosen.candidate).candidate);
}

function isFreed(one: Candidate, than: Candidate): boolean {
  return one.webFaults < than.webFaults && COUNTS.every((count) => (one[count] ?? 0) <= (than[count] ?? 0));
}

/** Fewest webs first, then the largest smallest piece, then the nearest to balance. */
function byWebs({ candidate: one }: Scored, { candidate: other }: Scored): number {
  return (
    one.webFaults - other.webFaults || other.smallestShare - one.smallestShare || one.shift - other.shift
  );
}

function withReason({ choice, candidate }: Scored, before: Candidate): Scored {
  const figures = {
    ...{ beforeCount: before.webFaults, afterCount: candidate.webFaults },
    ...{ before: before.smallest, size: candidate.smallest },
  };
  const reason = [...candidate.reason, { code: 'start.withoutWeb', figures }];
  return { choice, candidate: { ...candidate, reason } };
}
