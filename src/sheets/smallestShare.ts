import type { Candidate } from '../layout/Layout.ts';
import { sawShare } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** The smallest piece in sight of a start: its size as it is sawn, and the share of the tile that this is. */
export function smallestShare(
  { packet, length, number }: SheetContext,
  { smallest, smallestShare: share }: Pick<Candidate, 'smallest' | 'smallestShare'>,
): { readonly size: string; readonly percent: string } {
  const { saw, percent } = sawShare(smallest, smallest / share, packet.spec.print.step);
  return { size: length(saw), percent: number(percent, 0) };
}
