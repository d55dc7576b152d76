import type { Ticks } from '../../measure/index.ts';
import { bad, type Reader } from '../shape/Reader.ts';
import { length } from './length.ts';

/** 1/16 in, 1/32 in, 1 mm and 0.5 mm in ticks: the steps a saw list can be read to. */
const STEPS: readonly Ticks[] = [508, 254, 320, 160];

/**
 * The step that saw sizes are rounded to.
 *
 * @example
 * sawStep.read('1/16 in') //=> { ok: true, value: 508 }
 * sawStep.read('1/10 in').code //=> 'notASawStep'
 */
export const sawStep: Reader<Ticks> = {
  read: (value) => {
    const reading = length.read(value);
    return reading.ok && STEPS.includes(reading.value) ? reading : bad('notASawStep');
  },
  standIn: STEPS[0]!,
  json: { enum: ['1/16 in', '1/32 in', '1 mm', '0.5 mm'] },
};
