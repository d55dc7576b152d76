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
 */
export const flatness: Reader<Flatness> = {
  read: (value) => {
    const form = /^(.+?) under (.+?)(?: at (.+))?$/i.exec(String(value).trim().replace(/\s+/g, ' '));
    if (!form) return bad('notFlatness');
    const gap = length.read(form[1]);
    const under = size.read(form[2]);
    if (!gap.ok) return gap;
    if (!under.ok) return under;
    const reading = { gap: gap.value, under: under.value };
    return good(form[3] === undefined ? reading : { ...reading, where: form[3] });
  },
  standIn: { gap: Number.NaN, under: Number.NaN },
  json: { type: 'string', examples: ['3/16 in under 10 ft at the hall door'] },
};
