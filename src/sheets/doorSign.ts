import { isLaid } from './isLaid.ts';
import { noToilet } from './noToilet.ts';
import { noWayOut } from './noWayOut.ts';
import { roomCloses } from './roomCloses.ts';
import type { Sheet } from './Sheet.ts';

/** A sign for the door: closed until when, and for what. A floor that is laid needs none. */
export const doorSign: Sheet = {
  name: 'door-sign',
  for: 'all',
  bundles: ['owner', 'packet'],
  speaks: 'owner',
  make: (context) => {
    const { packet, say, time, clock } = context;
    const walk = packet.calendar.findLast((entry) => entry.code === 'walk');
    if (!walk || isLaid(packet)) return [];
    const closes = roomCloses(packet.calendar);
    const at = (code: string) => packet.calendar.findLast((entry) => entry.code === code);
    const heavy = at('furniture') ?? at('heavy');
    const cures = packet.calendar.find((entry) => entry.code === 'sealerCures');
    return [
      {
        landscape: true,
        data: {
          day: day(time(walk.from)),
          clock: clock(walk.from),
          from: closes ? say('sheet.door-sign.from', { from: time(closes.from) }) : '',
          heavy: heavy ? time(heavy.from) : '',
          again:
            cures?.to && cures.to > walk.from
              ? say('sheet.door-sign.again', { from: time(cures.from), to: time(cures.to) })
              : '',
          noToilet: noToilet(context, false),
          noWayOut: noWayOut(context),
          phone: packet.spec.contacts.phone ?? '',
          setter: packet.spec.contacts.setter ?? '',
        },
      },
    ];
  },
};

/** `Tue 9 Mar` of `Tue 9 Mar, 15:00`. */
function day(text: string): string {
  return text.slice(0, text.lastIndexOf(','));
}
