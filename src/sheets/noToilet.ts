import { roomCloses } from './roomCloses.ts';
import type { SheetContext } from './SheetContext.ts';
import { toiletBack } from './toiletBack.ts';

/**
 * From when to when the house has no toilet, for those who live there: where the job says that its only one is in this room. Empty
 * elsewhere. It goes with the first work in the room and goes back when heavy things may, or once
 * the sealer is dry; where it is back before, it stands in a closed room again meanwhile.
 *
 * @param withSealing false on a sheet that tells elsewhere when the room is closed again.
 */
export function noToilet(
  { packet, say, time }: Pick<SheetContext, 'packet' | 'say' | 'time'>,
  withSealing = true,
): string {
  if (!packet.spec.access.onlyToilet) return '';
  const at = (code: string) => packet.calendar.find((entry) => entry.code === code);
  const [closes, cures] = [roomCloses(packet.calendar), at('sealerCures')];
  const back = toiletBack(packet.calendar);
  if (!closes || !back) return '';
  const again = cures?.to && cures.to > back.from ? cures : undefined;
  const told = again && withSealing ? time(again.from) : 'closed';
  return say('noToilet', {
    from: time(closes.from),
    to: time(back.from),
    again: again ? told : 'none',
    open: again?.to ? time(again.to) : '',
  });
}
