import type { Ticks } from '../../measure/index.ts';
import type { Reader } from '../shape/Reader.ts';
import { length } from './length.ts';

/**
 * A length square off a line: with a minus sign on the other side of it.
 *
 * @example
 * sidedLength.read('3 in') //=> { ok: true, value: 24384 }
 * sidedLength.read('-3 in') //=> { ok: true, value: -24384 }
 */
export const sidedLength: Reader<Ticks> = {
  ...length,
  read: (value) => {
    const minus = typeof value === 'string' ? /^\s*[-−]\s*(.*)$/s.exec(value) : null;
    const reading = length.read(minus ? minus[1] : value);
    return reading.ok && minus ? { ok: true, value: 0 - reading.value } : reading;
  },
  json: { type: 'string', examples: ['12 in', '-3 1/2 in', '305 mm'] },
};
