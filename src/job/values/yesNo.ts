import { bad, good, type Reader } from '../shape/Reader.ts';

/**
 * Yes or no, as a word or as YAML's own true and false.
 *
 * @example
 * yesNo.read('no') //=> { ok: true, value: false }
 * yesNo.read(true) //=> { ok: true, value: true }
 * yesNo.read('perhaps').code //=> 'notYesNo'
 */
export const yesNo: Reader<boolean> = {
  read: (value) => {
    const word = String(value).trim().toLowerCase();
    if (['yes', 'true', 'on', 'y'].includes(word)) return good(true);
    if (['no', 'false', 'off', 'n'].includes(word)) return good(false);
    return bad('notYesNo');
  },
  standIn: false,
  json: { enum: ['yes', 'no', true, false] },
};
