import type { StartWish } from '../job/Job.ts';
import type { Candidate } from '../layout/Layout.ts';
import { printLength, sawDown } from '../measure/index.ts';
import { edgeAsNamed } from './edgeAsNamed.ts';
import type { SheetContext } from './SheetContext.ts';
import { wishAsWritten } from './wishAsWritten.ts';

type Held = Readonly<Record<'along' | 'across', StartWish>>;

/**
 * A start as the job file names it, such as `along: cut of 8 15/16 in at D-A, across: tile on A-B`, so that it can be built, in the
 * spelling of the file whatever the language of the sheet; empty where no run says which edges its cuts are at.
 *
 * @param held what the job file itself says of the start: on an axis that no cut tells it is said again.
 */
export function startAsWish(
  { packet }: Pick<SheetContext, 'packet'>,
  { ends, reason }: Candidate,
  held?: Held,
): string {
  const { step, system } = packet.spec.print;
  const wishes = (['along', 'across'] as const).flatMap((axis) => {
    const figures = reason.find((one) => one.figures.axis === axis)?.figures;
    if (!figures?.from || !figures.to)
      return held && held[axis].kind !== 'best' ? [`${axis}: ${wishAsWritten(held[axis], system)}`] : [];
    const [low, high] = ends[axis];
    // A cut that is less than the other end's says the place without doubt; a whole tile would say it for both ends.
    const [size, edge] = low <= high ? [low, figures.from] : [high, figures.to];
    return [`${axis}: cut of ${printLength(sawDown(size, step), system)} at ${edgeAsNamed(String(edge))}`];
  });
  return wishes.length === 2 ? wishes.join(', ') : '';
}
