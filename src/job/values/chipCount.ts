import { bad, good, type Reader } from '../shape/Reader.ts';

/** Chips along a sheet, at the most. */
const MOST = 60;

/**
 * Chips of a mosaic sheet along its length and width.
 *
 * @example
 * chipCount.read('10 x 12') //=> { ok: true, value: [10, 12] }
 * chipCount.read('10').code //=> 'notChips'
 */
export const chipCount: Reader<readonly [number, number]> = {
  read: (value) => {
    const [, one, other] = /^(\d{1,2}) ?[x×] ?(\d{1,2})$/i.exec(String(value).trim()) ?? [];
    const count = [Number(one), Number(other)] as const;
    return count.every((chips) => chips >= 1 && chips <= MOST) ? good(count) : bad('notChips');
  },
  standIn: [1, 1],
  json: { type: 'string', examples: ['10 x 10', '12 x 12'] },
};
