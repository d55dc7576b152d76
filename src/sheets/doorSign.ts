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
        landscape: true,
        data: {
          day: day(time(walk.from)),
          clock: walk.from.slice(11, 16),
          heavy: heavy ? time(heavy.from) : '',
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
