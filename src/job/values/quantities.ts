import {
  readArea,
  readAreaRange,
  readMass,
  readTemperature,
  readTime,
  readVolume,
} from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';

function quantity<R extends { readonly ok: boolean }>(
  read: (value: unknown) => R,
  pick: (reading: Extract<R, { ok: true }>) => number,
  code: string,
  examples: readonly string[],
  least = Number.MIN_VALUE,
): Reader<number> {
  return {
    read: (value) => {
      const reading = read(value);
      if (!reading.ok) return bad(code);
      const number = pick(reading as Extract<R, { ok: true }>);
      return number >= least && Number.isFinite(number) ? good(number) : bad(code);
    },
    standIn: Number.NaN,
    json: { type: 'string', examples },
  };
}

/**
 * A mass in kilograms.
 *
 * @example
 * mass.read('20 kg') //=> { ok: true, value: 20 }
 */
export const mass = quantity(readMass, ({ massKg }) => massKg, 'notAMass', ['50 lb', '20 kg']);

/**
 * A length of time in hours.
 *
 * @example
 * time.read('3 days') //=> { ok: true, value: 72 }
 * time.read(24).code //=> 'notATime'
 */
export const time = quantity(readTime, ({ hours }) => hours, 'notATime', ['24 h', '3 days'], 0);

/**
 * A volume in litres.
 *
 * @example
 * volume.read('2.5 L') //=> { ok: true, value: 2.5 }
 */
export const volume = quantity(readVolume, ({ litres }) => litres, 'notAVolume', ['1 qt', '1 L', '10 fl oz']);

/**
 * A temperature in °C.
 *
 * @example
 * temperature.read('50 F') //=> { ok: true, value: 10 }
 */
export const temperature = quantity(
  readTemperature,
  ({ tempC }) => tempC,
  'notATemperature',
  ['70 F', '21 C'],
  -60,
);

/**
 * A pace in square metres an hour.
 *
 * @example
 * pace.read('1.5 m2 an hour') //=> { ok: true, value: 1.5 }
 * pace.read('1.5 m2').code //=> 'notAPace'
 */
export const pace = quantity(
  (value) => readArea(/^(.*\S) *(?:(?:an|per|a) h(?:our|r)?|\/ *h(?:our|r)?)$/i.exec(String(value))?.[1]),
  ({ areaM2 }) => areaM2,
  'notAPace',
  ['12 sq ft an hour', '1.1 m2 an hour'],
);

/**
 * An area, or a range of two, in square metres.
 *
 * @example
 * areaRange.read('6-8 m2') //=> { ok: true, value: [6, 8] }
 */
export const areaRange: Reader<readonly [number, number]> = {
  read: (value) => {
    const reading = readAreaRange(value);
    return reading.ok && reading.lowM2 > 0 ? good([reading.lowM2, reading.highM2]) : bad('notAnArea');
  },
  standIn: [Number.NaN, Number.NaN],
  json: { type: 'string', examples: ['60-80 sq ft', '6-8 m2'] },
};

/**
 * A time, or a range of two, in hours; a single time has no second.
 *
 * @example
 * timeRange.read('4-6 days') //=> { ok: true, value: [96, 144] }
 * timeRange.read('72 h') //=> { ok: true, value: [72] }
 */
export const timeRange: Reader<readonly [number, number?]> = {
  read: (value) => {
    const range = /^([\d.]+) *(?:[-–—]|to) *([\d.]+) *(\D.*)$/.exec(String(value).trim());
    const first = time.read(range ? `${range[1]} ${range[3]}` : value);
    if (!range || !first.ok) return first.ok ? good([first.value]) : first;
    const second = time.read(`${range[2]} ${range[3]}`);
    if (!second.ok) return second;
    return second.value < first.value ? bad('notATime') : good([first.value, second.value]);
  },
  standIn: [Number.NaN],
  json: { type: 'string', examples: ['72 h', '4-6 days'] },
};
