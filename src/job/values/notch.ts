import { plainText } from '../../measure/index.ts';
import type { MortarSpec } from '../Job.ts';
import { bad, good, type Reader } from '../shape/Reader.ts';
import { size } from './length.ts';

type Notch = MortarSpec['notch'];

const EXAMPLES = ['1/4 in x 3/8 in x 1/4 in', 'V 3/16 in', '6 x 10 x 6 mm'];

/** Sizes of a notch; one unit at the end serves all. */
function sizes(text: string): readonly number[] | undefined {
  const parts = plainText(text).split(/ ?[x×] ?/i);
  const unit = /[a-z"]+\.?$/i.exec(parts.at(-1) ?? '')?.[0] ?? '';
  const readings = parts.map((part) => size.read(/[a-z"]$/i.test(part) ? part : `${part} ${unit}`));
  return readings.every((reading) => reading.ok) ? readings.map(({ value }) => value) : undefined;
}

/** A V notch stands edge to edge unless a space is given; one size alone is both its width and its depth. */
function notchOf(kind: Notch['kind'], found: readonly number[]): Notch | undefined {
  const [width, second, third] = found;
  if (width === undefined || found.length > 3) return undefined;
  if (kind === 'v') return { kind, width, depth: second ?? width, space: third ?? 0 };
  if (found.length === 2) return undefined;
  return { kind, width, depth: second ?? width, space: third ?? width };
}

/**
 * A trowel's notch: width x depth x space between, `V` before a V notch. A single size is all three.
 *
 * @example
 * notch.read('1/4 in x 3/8 in x 1/4 in') //=> { ok: true, value: { kind: 'square', width: 2032, depth: 3048, space: 2032 } }
 * notch.read('V 3/16 in') //=> { ok: true, value: { kind: 'v', width: 1524, depth: 1524, space: 0 } }
 * notch.read('medium').code //=> 'notANotch'
 */
export const notch: Reader<Notch> = {
  read: (value) => {
    const [, v, rest] = /^(v(?=[\s\d]))? *(.*)$/i.exec(String(value).trim()) ?? [];
    const found = sizes(rest ?? '');
    const shape = found && notchOf(v ? 'v' : 'square', found);
    return shape ? good(shape) : bad('notANotch');
  },
  standIn: { kind: 'square', width: Number.NaN, depth: Number.NaN, space: Number.NaN },
  json: { type: 'string', examples: EXAMPLES },
};
