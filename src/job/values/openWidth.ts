import type { BorderCourse } from '../Job.ts';
import { good, type Reader } from '../shape/Reader.ts';
import { size } from './length.ts';

/**
 * A width in ticks, or `solve` where it is to be worked out.
 *
 * @example
 * openWidth.read('4 in') //=> { ok: true, value: 32512 }
 * openWidth.read('Solve') //=> { ok: true, value: 'solve' }
 * openWidth.read('wide').code //=> 'notALength'
 */
export const openWidth: Reader<BorderCourse['width']> = {
  read: (value) => (String(value).trim().toLowerCase() === 'solve' ? good('solve') : size.read(value)),
  standIn: 'solve',
  json: { type: 'string', examples: ['4 in', '100 mm', 'solve'] },
};
