import { isDeadEnd } from '../job/isDeadEnd.ts';
import { floorSoft } from './roomCloses.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * From when to when nobody may go over the floor, for those who live there: where the job says that the only way out of the house leads
 * over it; asked where the floor has but one doorway, so that nobody can cross it. Empty elsewhere.
 */
export function noWayOut({ packet, say, time }: Pick<SheetContext, 'packet' | 'say' | 'time'>): string {
  if (!packet.spec.access.onlyExit) return '';
  const soft = floorSoft(packet.calendar);
  const walk = packet.calendar.findLast(({ code }) => code === 'walk');
  if (!soft || !walk) return '';
  const sealed = packet.calendar.find(({ code }) => code === 'sealerCures');
  const cures = sealed?.to && sealed.to > walk.from ? sealed : undefined;
  return say('noWayOut', {
    deadEnd: isDeadEnd(packet.spec) ? 'yes' : 'no',
    from: time(soft.from),
    to: time(walk.from),
    again: cures?.to ? time(cures.from) : 'none',
    open: cures?.to ? time(cures.to) : '',
  });
}
