import type { Ticks } from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { size } from './length.ts';

/** With what a room was read: a tape, a laser, something with a standard deviation of its own, or nobody knows. */
export type GivenPrecision =
  | { readonly by: 'tape' | 'laser' | 'unknown' }
  | { readonly by: 'stated'; readonly sd: Ticks };

/**
 * How exact readings are: `tape`, `laser`, `unknown` or a length, by which a reading is out in two of three cases at most.
 *
 * @example
 * precision.read('laser') //=> { ok: true, value: { by: 'laser' } }
 * precision.read('1/32 in') //=> { ok: true, value: { by: 'stated', sd: 254 } }
 * precision.read('good').code //=> 'notAPrecision'
 */
export const precision: Reader<GivenPrecision> = {
  read: (value) => {
    const word = String(value).trim().toLowerCase();
    if (word === 'tape' || word === 'laser' || word === 'unknown') return good({ by: word });
    const reading = size.read(value);
    if (reading.ok) return good({ by: 'stated', sd: reading.value });
    return reading.code === 'notALength' ? bad('notAPrecision') : reading;
  },
  standIn: { by: 'tape' },
  json: { type: 'string', examples: ['tape', 'laser', '1/16 in', 'unknown'] },
};
