import { readRatio } from '../../measure/index.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';

function plainNumber(value: unknown): number {
  return /^\d{1,9}(?:\.\d{1,9})?$/.test(String(value).trim()) ? Number(value) : Number.NaN;
}

/**
 * A whole number, 0 or more.
 *
 * @example
 * count.read(11) //=> { ok: true, value: 11 }
 * count.read('a few').code //=> 'notACount'
 */
export const count: Reader<number> = {
  read: (value) => {
    const number = plainNumber(value);
    return Number.isInteger(number) && number <= 1_000_000 ? good(number) : bad('notACount');
  },
  standIn: Number.NaN,
  json: { type: 'integer', minimum: 0 },
};

/**
 * A whole number over 0.
 *
 * @example
 * some.read(0).code //=> 'notACount'
 */
export const some: Reader<number> = {
  ...count,
  read: (value) => {
    const reading = count.read(value);
    return reading.ok && reading.value === 0 ? bad('notACount') : reading;
  },
  json: { type: 'integer', minimum: 1 },
};

/**
 * A number of modules, either way: `2`, `-1`, `0.5`.
 *
 * @example
 * modules.read('-1') //=> { ok: true, value: -1 }
 * modules.read('two').code //=> 'notModules'
 */
export const modules: Reader<number> = {
  read: (value) => {
    const text = String(value).trim();
    return /^-?\d{1,3}(?:\.\d{1,6})?$/.test(text) ? good(Number(text)) : bad('notModules');
  },
  standIn: Number.NaN,
  json: { type: 'number' },
};

/**
 * A price in the money of the job.
 *
 * @example
 * price.read('41.50') //=> { ok: true, value: 41.5 }
 */
export const price: Reader<number> = {
  read: (value) => {
    const number = plainNumber(value);
    return Number.isNaN(number) ? bad('notAPrice') : good(number);
  },
  standIn: Number.NaN,
  json: { type: 'number', minimum: 0 },
};

/**
 * Friction of a face: a number over 0, up to 2.
 *
 * @example
 * friction.read('0.42') //=> { ok: true, value: 0.42 }
 * friction.read(42).code //=> 'notAFriction'
 */
export const friction: Reader<number> = {
  read: (value) => {
    const number = plainNumber(value);
    return number > 0 && number <= 2 ? good(number) : bad('notAFriction');
  },
  standIn: Number.NaN,
  json: { type: 'number', exclusiveMinimum: 0, maximum: 2 },
};

/**
 * A share of a whole, 0 to 1: `3 %`, `1/2` or `0.03`.
 *
 * @example
 * share.read('3 %') //=> { ok: true, value: 0.03 }
 * share.read('1/2') //=> { ok: true, value: 0.5 }
 * share.read(3).code //=> 'notAShare'
 */
export const share: Reader<number> = {
  read: (value) => {
    const [, digits, percent] = /^([\d./ ]+?) *(%?)$/.exec(String(value).trim()) ?? [];
    const ratio = readRatio(digits ?? '');
    const number = ratio ? ratio.numerator / (ratio.denominator * (percent ? 100 : 1)) : Number.NaN;
    return number >= 0 && number <= 1 ? good(number) : bad('notAShare');
  },
  standIn: Number.NaN,
  json: { type: ['string', 'number'], examples: ['3 %', '1/2'] },
};

function degrees(text: string): number {
  return /^-?\d{1,3}(?:\.\d{1,6})?$/.test(text) ? Number(text) : Number.NaN;
}

function angle(accept: (degrees: number) => boolean): Reader<number> {
  return {
    read: (value) => {
      const number = degrees(
        String(value)
          .replace('−', '-')
          .replace(/ *(?:°|deg(?:rees)?)$/, '')
          .trim(),
      );
      return accept(number) ? good(number) : bad('notAnAngle');
    },
    standIn: Number.NaN,
    json: { type: ['number', 'string'], examples: [45, 270] },
  };
}

/**
 * The inner angle of a corner in degrees: over 0 and under 360.
 *
 * @example
 * innerAngle.read('270°') //=> { ok: true, value: 270 }
 * innerAngle.read(360).code //=> 'notAnAngle'
 */
export const innerAngle = angle((number) => number > 0 && number < 360);

/**
 * How far a pattern is turned, in degrees, counter-clockwise.
 *
 * @example
 * turn.read(45) //=> { ok: true, value: 45 }
 * turn.read(-45) //=> { ok: true, value: -45 }
 */
export const turn = angle((number) => Math.abs(number) <= 360);

/**
 * The angle between two sides of a tile, in degrees: 20 to 90.
 *
 * @example
 * slant.read(45) //=> { ok: true, value: 45 }
 * slant.read(120).code //=> 'notAnAngle'
 */
export const slant = angle((number) => number >= 20 && number <= 90);

/**
 * The year a house was built; undefined for `unknown`.
 *
 * @example
 * year.read(1957) //=> { ok: true, value: 1957 }
 * year.read('unknown') //=> { ok: true, value: undefined }
 * year.read('old').code //=> 'notAYear'
 */
export const year: Reader<number | undefined> = {
  read: (value) => {
    const word = String(value).trim().toLowerCase();
    if (word === 'unknown') return good(undefined);
    const number = /^\d{4}$/.test(word) ? Number(word) : Number.NaN;
    return number >= 1000 && number <= 2999 ? good(number) : bad('notAYear');
  },
  standIn: undefined,
  json: { type: ['integer', 'string'], examples: [1957, 'unknown'] },
};
