import type { StartWish } from '../job/Job.ts';
import { printLength, type System } from '../measure/index.ts';

/**
 * A wish for the start on one axis in the spelling of the job file.
 *
 * @example wishAsWritten({ kind: 'cut', size: 44704, at: 'A-B' }, 'inches') //=> 'cut of 5 1/2 in at A-B'
 * @example wishAsWritten({ kind: 'centred', between: ['A-B', 'C-D'], what: 'tile' }, 'inches') //=> 'tile centred between A-B and C-D'
 */
export function wishAsWritten(wish: StartWish, system: System): string {
  if (wish.kind === 'best') return 'best';
  if (wish.kind === 'cut') return `cut of ${printLength(wish.size, system)} at ${wish.at}`;
  if (wish.kind !== 'centred') return `${wish.kind} on ${wish.on}`;
  return `${wish.what ? `${wish.what} ` : ''}centred between ${wish.between.join(' and ')}`;
}
