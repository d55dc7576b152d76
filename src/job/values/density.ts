import { bad, good, type Reader } from '../shape/Reader.ts';

/**
 * Kilograms of dry powder to a litre of joint.
 *
 * @example
 * density.read('1.6 kg per litre') //=> { ok: true, value: 1.6 }
 * density.read('1.6').code //=> 'notADensity'
 */
export const density: Reader<number> = {
  read: (value) => {
    const form = /^(\d{1,2}(?:\.\d{1,3})?) *kg *(?:\/|per|a) *(?:l|lit(?:re|er))$/i.exec(
      String(value).trim(),
    );
    const number = Number(form?.[1] ?? 0);
    return number > 0 ? good(number) : bad('notADensity');
  },
  standIn: Number.NaN,
  json: { type: 'string', examples: ['1.6 kg per litre'] },
};
