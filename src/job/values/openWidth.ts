import type { BorderCourse } from '../Job.ts';
import { good, type Reader } from '../shape/Reader.ts';
import { size } from './length.ts';

/**
 * A width in ticks, or `solve` where it is to be worked out, if need be between two walls that are named.
 *
 * @example
 * openWidth.read('4 in') //=> { ok: true, value: 32512 }
 * openWidth.read('Solve') //=> { ok: true, value: 'solve' }
 * openWidth.read('solve between A-B and C-D').value //=> { between: ['A-B', 'C-D'] }
 * openWidth.read('wide').code //=> 'notALength'
 */
export const openWidth: Reader<BorderCourse['width']> = {
  read: (value) => {
    const text = String(value).trim().replace(/\s+/g, ' ');
    if (/^solve$/i.test(text)) return good('solve');
    const [, one, other] = /^solve between (.+?) and (.+)$/i.exec(text) ?? [];
    return one && other ? good({ between: [one, other] }) : size.read(value);
  },
  standIn: 'solve',
  json: { type: 'string', examples: ['4 in', '100 mm', 'solve', 'solve between A-B and C-D'] },
};
