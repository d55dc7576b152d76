import { readPair, type Ticks } from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';

/**
 * Two lengths over 0, such as `11 13/16 in x 23 7/8 in`.
 *
 * @example
 * pair.read('600 x 300 mm') //=> { ok: true, value: [192000, 96000] }
 * pair.read('12 in').code //=> 'notAPair'
 */
export const pair: Reader<readonly [Ticks, Ticks]> = {
  read: (value) => {
    const reading = readPair(typeof value === 'number' ? String(value) : value);
    if (!reading.ok) return bad(reading.code === 'bareNumber' ? 'bareNumber' : 'notAPair');
    if (reading.first === 0 || reading.second === 0) return bad('zeroLength');
    return good([reading.first, reading.second]);
  },
  standIn: [Number.NaN, Number.NaN],
  json: { type: 'string', examples: ['11 13/16 in x 11 13/16 in', '597 mm x 297 mm'] },
};
