import type { BaseSpec } from '../Job.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { length, size } from './length.ts';

type Flatness = BaseSpec['flatness'][number];

/**
 * A gap found under a straightedge: `3/16 in under 10 ft at the hall door`.
 *
 * @example
 * flatness.read('4 mm under 2 m') //=> { ok: true, value: { gap: 1280, under: 640000 } }
 * flatness.read('4 mm under 2 m at the door').value.where //=> 'the door'
 * flatness.read('wavy').code //=> 'notFlatness'
 * flatness.read('4 mm under 2 m in the middle').figures //=> { gap: '4 mm', under: '2 m', place: 'the middle' }
 */
export const flatness: Reader<Flatness> = {
  read: (value) => {
    const form = /^(.+?) under (.+?)(?: at (.+))?$/i.exec(String(value).trim().replace(/\s+/g, ' '));
    if (!form) return bad('notFlatness');
    const gap = length.read(form[1]);
    const under = size.read(form[2]);
    // The sentence names the whole text as what was found, of which only a part would be a length.
    if (!gap.ok) return gap.code === 'notALength' ? bad('notFlatness') : gap;
    if (!under.ok) return under.code === 'notALength' ? withoutAt(form[1]!, form[2]!) : under;
    const reading = { gap: gap.value, under: under.value };
    return good(form[3] === undefined ? reading : { ...reading, where: form[3] });
  },
  standIn: { gap: Number.NaN, under: Number.NaN },
  json: { type: 'string', examples: ['3/16 in under 10 ft at the hall door'] },
};

/** Where a place follows the straightedge without the word between them: what it would be with that. */
function withoutAt(gap: string, rest: string) {
  const words = rest.split(' ');
  const lengths = words.map((_, i) => words.slice(0, i).join(' '));
  const under = lengths.findLast((start) => start !== '' && size.read(start).ok);
  if (under === undefined) return bad('notFlatness');
  const place = rest.slice(under.length + 1).replace(/^(in|on|near|by) /i, '');
  return bad('flatnessWithoutAt', { gap, under, place });
}
