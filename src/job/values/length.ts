import { readLength, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import { bad, good, type Reader, type Reading } from '../shape/Reader.ts';

/** 50 m: up to there the figures of a plan are exact. */
const LONGEST: Ticks = 50_000 * TICKS_PER_MM;

function read(value: unknown): Reading<Ticks> {
  const reading = readLength(value);
  if (!reading.ok) return bad(reading.code === 'notText' ? 'notALength' : reading.code);
  return reading.ticks > LONGEST ? bad('tooLong', { longest: '50 m (164 ft)' }) : good(reading.ticks);
}

/**
 * A length in ticks, 0 or more, up to 50 m.
 *
 * @example
 * length.read('3/16 in') //=> { ok: true, value: 1524 }
 * length.read(98.25).code //=> 'bareNumber'
 * length.read('60 m').code //=> 'tooLong'
 */
export const length: Reader<Ticks> = {
  read,
  standIn: Number.NaN,
  json: { type: 'string', examples: ['8 ft 2 1/4 in', '98 1/4 in', '2495 mm'] },
};

/**
 * A length over 0.
 *
 * @example
 * size.read('0 in').code //=> 'zeroLength'
 */
export const size: Reader<Ticks> = {
  ...length,
  read: (value) => {
    const reading = read(value);
    return reading.ok && reading.value === 0 ? bad('zeroLength') : reading;
  },
};

/**
 * The width of a joint, over 0: tile set without one breaks.
 *
 * @example
 * jointWidth.read('0 in').code //=> 'zeroJoint'
 */
export const jointWidth: Reader<Ticks> = {
  ...length,
  read: (value) => {
    // The commonest slip here is a bare 0, which has no unit to ask for.
    if (String(value).trim() === '0') return bad('zeroJoint');
    const reading = read(value);
    return reading.ok && reading.value === 0 ? bad('zeroJoint') : reading;
  },
  json: { type: 'string', examples: ['3/16 in', '3 mm'] },
};
