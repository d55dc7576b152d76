import type { Sheet } from './Sheet.ts';

/** A sign for the door: closed until when, and for what. */
export const doorSign: Sheet = {
  name: 'door-sign',
  for: 'all',
  bundles: ['owner', 'packet'],
  speaks: 'owner',
  make: ({ packet, time }) => {
    const walk = packet.calendar.findLast((entry) => entry.code === 'walk');
    if (!walk) return [];
    const heavy = packet.calendar.findLast((entry) => entry.code === 'heavy');
    return [
      {
        data: {
          until: time(walk.from),
          heavy: heavy ? time(heavy.from) : '',
          phone: packet.spec.contacts.phone ?? '',
          setter: packet.spec.contacts.setter ?? '',
        },
      },
    ];
  },
};
