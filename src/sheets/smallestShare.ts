import type { Candidate } from '../layout/Layout.ts';
import { sawShare } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';
import { taperedSize } from './taperedSize.ts';

/**
 * The smallest piece in sight of a start: its size as it is sawn, from its narrow end to its wide end where a wall leans, and the share of the tile
 * that it is, or that either end is.
 */
export function smallestShare(
  context: SheetContext,
  candidate: Pick<Candidate, 'smallest' | 'smallestShare' | 'smallestEnd'>,
): { readonly size: string; readonly percent: string } {
  const { smallest, smallestShare: share, smallestEnd: end = smallest } = candidate;
  const { step } = context.packet.spec.print;
  const [least, most] = [Math.min(end, smallest), smallest].map((one) =>
    sawShare(one, smallest / share, step),
  ) as [ReturnType<typeof sawShare>, ReturnType<typeof sawShare>];
  const percents = [...new Set([least.percent, most.percent])].map((percent) => context.number(percent, 0));
  return { size: taperedSize(context, most.saw, least.saw), percent: percents.join('–') };
}
