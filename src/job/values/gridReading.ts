import type { Ticks } from '../../measure/index.ts';
import { good, type Reader } from '../shape/Reader.ts';
import { length } from './length.ts';

/**
 * One reading of a grid: a length that may lie below its datum, or `none` where nothing could be read.
 *
 * @example
 * gridReading.read('-1/8 in') //=> { ok: true, value: -1016 }
 * gridReading.read('none') //=> { ok: true, value: null }
 * gridReading.read(3).code //=> 'bareNumber'
 */
export const gridReading: Reader<Ticks | null> = {
  read: (value) => {
    const text = String(value).trim();
    if (/^none$/i.test(text)) return good(null);
    const below = /^[-−](?=[\d.])/.test(text);
    const reading = length.read(below ? text.slice(1) : value);
    return reading.ok && below && reading.value !== 0 ? good(-reading.value) : reading;
  },
  standIn: null,
  json: { type: 'string', examples: ['0 in', '1/8 in', '3 mm', 'none'] },
};
