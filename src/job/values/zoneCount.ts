import type { ZoneWish } from '../Job.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { some } from './numbers.ts';

/**
 * How many zones the floor is set in: a number, or `auto`: halved while a day does not reach.
 *
 * @example
 * zoneCount.read(2) //=> { ok: true, value: { kind: 'count', count: 2 } }
 * zoneCount.read('auto') //=> { ok: true, value: { kind: 'auto' } }
 * zoneCount.read('many').code //=> 'notZones'
 */
export const zoneCount: Reader<ZoneWish> = {
  read: (value) => {
    if (String(value).trim().toLowerCase() === 'auto') return good({ kind: 'auto' });
    const reading = some.read(value);
    return reading.ok && reading.value <= 50
      ? good({ kind: 'count', count: reading.value })
      : bad('notZones');
  },
  standIn: { kind: 'auto' },
  json: { type: ['integer', 'string'], examples: ['auto', 2] },
};
