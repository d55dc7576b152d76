import type { Candidate } from '../layout/Layout.ts';
import { sawDown, sawShare } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';
import { taperedSize } from './taperedSize.ts';

/**
 * The smallest piece in sight of a start: its size as it is sawn, from its wide end to its narrow end where a wall leans, and the share of
 * the tile that the last of both is.
 */
export function smallestShare(
  context: SheetContext,
  candidate: Pick<Candidate, 'smallest' | 'smallestShare' | 'smallestEnd'>,
): { readonly size: string; readonly percent: string } {
  const { smallest, smallestShare: share, smallestEnd: end = smallest } = candidate;
  const { step } = context.packet.spec.print;
  const { saw, percent } = sawShare(Math.min(end, smallest), smallest / share, step);
  const wide = share === 1 ? saw : sawDown(smallest, step);
  return { size: taperedSize(context, wide, saw), percent: context.number(percent, 0) };
}
