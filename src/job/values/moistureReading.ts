import type { MoistureReading } from '../Job.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';

const FORM = /^(\d{1,3}(?:\.\d{1,2})?) *(lbs?|pounds?|% *rh|% *cm|% *mc)\b.*$/i;

function unitOf(word: string): MoistureReading['unit'] {
  if (/rh$/i.test(word)) return '% RH';
  if (/mc$/i.test(word)) return '% MC';
  return /cm$/i.test(word) ? '% CM' : 'lb';
}

/**
 * Moisture of a base as its test tells it: pounds per 1000 sq ft and day, relative humidity, carbide
 * percent, or moisture content of wood.
 *
 * @example
 * moistureReading.read('4 lb') //=> { ok: true, value: { value: 4, unit: 'lb' } }
 * moistureReading.read('78 % RH').value //=> { value: 78, unit: '% RH' }
 * moistureReading.read('damp').code //=> 'notMoisture'
 */
export const moistureReading: Reader<MoistureReading> = {
  read: (value) => {
    const form = FORM.exec(String(value).trim());
    return form ? good({ value: Number(form[1]), unit: unitOf(form[2]!) }) : bad('notMoisture');
  },
  standIn: { value: Number.NaN, unit: 'lb' },
  json: { type: 'string', examples: ['4 lb', '78 % RH', '2.1 % CM', '9 % MC'] },
};
