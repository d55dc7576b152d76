import type { StartWish } from '../../job/Job.ts';

/**
 * A wish in the words of the job file, without lengths.
 *
 * @example wishText({ kind: 'centred', between: ['A-B', 'C-D'] }) //=> 'centred A-B C-D'
 */
export function wishText(wish: StartWish): string {
  if (wish.kind === 'best') return 'best';
  if (wish.kind === 'centred') return `centred ${wish.between.join(' ')}`;
  return wish.kind === 'cut' ? `cut ${wish.at}` : `${wish.kind} ${wish.on}`;
}
