import { roomCloses } from './roomCloses.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * From when to when the house has no toilet, for those who live there: where the job says that its only one is in this room. Empty
 * elsewhere. It goes with the first work in the room, goes back when heavy things may, and stands in a closed room again while the sealer dries.
 *
 * @param withSealing false on a sheet that tells elsewhere when the room is closed again.
 */
export function noToilet(
  { packet, say, time }: Pick<SheetContext, 'packet' | 'say' | 'time'>,
  withSealing = true,
): string {
  if (!packet.spec.access.onlyToilet) return '';
  const at = (code: string) => packet.calendar.find((entry) => entry.code === code);
  const [closes, heavy, cures] = [roomCloses(packet.calendar), at('heavy'), at('sealerCures')];
  if (!closes || !heavy) return '';
  const again = cures?.to && cures.to > heavy.from ? cures : undefined;
  // A toilet that goes back on the day on which the room is closed again serves nobody that day.
  if (again?.to && again.from.slice(0, 10) === heavy.from.slice(0, 10))
    return say('noToilet', { from: time(closes.from), to: time(again.to), again: 'none', open: '' });
  const told = again && withSealing ? time(again.from) : 'closed';
  return say('noToilet', {
    from: time(closes.from),
    to: time(heavy.from),
    again: again ? told : 'none',
    open: again?.to ? time(again.to) : '',
  });
}
