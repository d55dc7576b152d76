import { bad, good, type Reader } from '../shape/Reader.ts';

const WORDS: Readonly<Record<string, number>> = { single: 1, double: 2, two: 2, three: 3, four: 4 };

/**
 * How many tiles side by side turn as one: `single`, `double`, or a number up to 12.
 *
 * @example
 * grouping.read('double') //=> { ok: true, value: 2 }
 * grouping.read(3) //=> { ok: true, value: 3 }
 * grouping.read('many').code //=> 'notAGrouping'
 */
export const grouping: Reader<number> = {
  read: (value) => {
    const text = String(value).trim().toLowerCase();
    const number = WORDS[text] ?? (/^\d{1,2}$/.test(text) ? Number(text) : 0);
    return number >= 1 && number <= 12 ? good(number) : bad('notAGrouping');
  },
  standIn: 1,
  json: { type: ['string', 'integer'], examples: ['single', 'double', 3] },
};
