import type { Layer } from '../job/Job.ts';

/** What a layer is called that heats the floor, in the languages of the job file. */
const HEATING = /\b(?:heat(?:ing|ed)?|underfloor|calefac\w*|radiantes?|aquec\w*)\b/i;

/**
 * Whether a layer is the heating of the floor, by its name.
 *
 * @example isHeating({ name: 'heat mat' }) //=> true
 * @example isHeating({ name: 'manta de aquecimento' }) //=> true
 * @example isHeating({ name: 'membrane' }) //=> false
 */
export function isHeating({ name }: Pick<Layer, 'name'>): boolean {
  return HEATING.test(name);
}
