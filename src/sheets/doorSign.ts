import { hasToilet } from '../job/hasToilet.ts';
import { isLaid } from './isLaid.ts';
import { noToilet } from './noToilet.ts';
import { noWayOut } from './noWayOut.ts';
import { roomCloses } from './roomCloses.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { toiletBack } from './toiletBack.ts';

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
          ...waterAndToilet(context, walk.from),
          noToilet: noToilet(context, false),
          noWayOut: noWayOut(context),
          phone: packet.spec.contacts.phone ?? '',
          setter: packet.spec.contacts.setter ?? '',
        },
      },
    ];
  },
};

/** What may not be done yet when the room opens: water on the floor; and from when on the toilet is back, where no line of its own says so. */
function waterAndToilet({ packet, say, time }: SheetContext, opens: string) {
  const water = packet.calendar.find(({ code }) => code === 'water');
  const back = hasToilet(packet.spec) && !packet.spec.access.onlyToilet && toiletBack(packet.calendar);
  return {
    water: water && water.from > opens ? say('sheet.door-sign.water', { water: time(water.from) }) : '',
    toilet: back ? say('sheet.door-sign.toilet', { back: time(back.from) }) : '',
  };
}

/** `Tue 9 Mar` of `Tue 9 Mar, 15:00`. */
function day(text: string): string {
  return text.slice(0, text.lastIndexOf(','));
}
