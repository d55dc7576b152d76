import type { Ticks } from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { length } from './length.ts';

/**
 * Where the middle of a wall stands, off a straight line between its ends: `1/4 in in` the room, or `6 in out` of it. More
 * than 0 out of the room.
 *
 * @example
 * wallMiddle.read('1/4 in in') //=> { ok: true, value: -2032 }
 * wallMiddle.read('6 in out') //=> { ok: true, value: 48768 }
 * wallMiddle.read('1/4 in').code //=> 'notAMiddle'
 */
export const wallMiddle: Reader<Ticks> = {
  read: (value) => {
    const form = /^(.*[a-z"”″].*?) +(in|out)$/i.exec(String(value).trim().replace(/\s+/g, ' '));
    if (!form) return bad('notAMiddle');
    const by = length.read(form[1]);
    if (!by.ok) return by;
    return good(by.value === 0 || /^out$/i.test(form[2]!) ? by.value : -by.value);
  },
  standIn: 0,
  json: { type: 'string', examples: ['1/4 in in', '6 in out', '12 mm out'] },
};
