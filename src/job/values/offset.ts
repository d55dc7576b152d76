import { commonDivisor, readLength, readRatio } from '../../measure/index.ts';
import type { PatternSpec } from '../Job.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';

type Offset = NonNullable<PatternSpec['offset']>;

const WORDS: Readonly<Record<string, string>> = { half: '1/2', third: '1/3', quarter: '1/4' };

function fraction(text: string): Offset | undefined {
  const percent = /^([\d.]+) *%$/.exec(text);
  const ratio = readRatio(percent ? percent[1]! : text);
  if (!ratio) return undefined;
  const whole = ratio.denominator * (percent ? 100 : 1);
  if (ratio.numerator <= 0 || ratio.numerator >= whole) return undefined;
  const common = commonDivisor(ratio.numerator, whole);
  return { numerator: ratio.numerator / common, denominator: whole / common };
}

/**
 * How far each course of a running bond is shifted: a part of the module or a length.
 *
 * @example
 * offset.read('2/6') //=> { ok: true, value: { numerator: 1, denominator: 3 } }
 * offset.read('8 in') //=> { ok: true, value: { length: 65024 } }
 * offset.read(8).code //=> 'notAnOffset'
 */
export const offset: Reader<Offset> = {
  read: (value) => {
    const text = String(value).trim().toLowerCase();
    const part = fraction(WORDS[text] ?? text);
    if (part) return good(part);
    const reading = readLength(value);
    return reading.ok && reading.ticks > 0 ? good({ length: reading.ticks }) : bad('notAnOffset');
  },
  standIn: { numerator: 1, denominator: 2 },
  json: { type: ['string', 'number'], examples: ['1/3', '1/2', '8 in'] },
};
