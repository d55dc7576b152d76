import type { Ticks } from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { length } from './length.ts';

/** A height and the layer it was measured from; negative when it lies below. */
export interface HeightAbove {
  readonly height: Ticks;
  readonly above: string;
  readonly wanted?: Ticks;
}

const FORM = /^(.+?) (above|over|below|under) (.+?)(?:, *(?:wanted|needs) (.+))?$/i;

/**
 * A height as measured now and on what: `1/4 in above vinyl`; `wanted` or `needs` and another height may follow a comma.
 *
 * @example
 * heightAbove.read('1/4 in above vinyl') //=> { ok: true, value: { height: 2032, above: 'vinyl' } }
 * heightAbove.read('5 mm below boards, wanted 6 mm').value //=> { height: -1600, above: 'boards', wanted: 1920 }
 * heightAbove.read('1/4 in').code //=> 'notAHeight'
 */
export const heightAbove: Reader<HeightAbove> = {
  read: (value) => {
    const form = FORM.exec(String(value).trim().replace(/\s+/g, ' '));
    if (!form) return bad('notAHeight');
    const height = length.read(form[1]);
    const wanted = form[4] === undefined ? undefined : length.read(form[4]);
    if (!height.ok) return height;
    if (wanted && !wanted.ok) return wanted;
    const sign = /^(?:below|under)$/i.test(form[2]!) ? -1 : 1;
    const at = { height: height.value === 0 ? 0 : sign * height.value, above: form[3]! };
    return good(wanted ? { ...at, wanted: wanted.value } : at);
  },
  standIn: { height: Number.NaN, above: '' },
  json: { type: 'string', examples: ['1/4 in above vinyl', '3/4 in above boards'] },
};
