import type { System, Ticks } from '../measure/index.ts';
import type { Exposure } from './contact.ts';
import type { Fact } from './Fact.ts';
import { feet, millimetres } from './inches.ts';

/** Feet or metres between movement joints: dry inside, and outside or inside in sun, heat or moisture; the stricter figures too. */
interface BayLimits {
  readonly dry: number;
  readonly dryStrict: number;
  readonly exposed: number;
  readonly exposedStrict: number;
}

/** Most between movement joints, in feet and in the round metres that are printed beside them. */
export const MOVEMENT: Fact<Readonly<Record<'feet' | 'metres', BayLimits>>> = {
  value: {
    feet: { dry: 25, dryStrict: 20, exposed: 12, exposedStrict: 8 },
    metres: { dry: 7.6, dryStrict: 6.1, exposed: 3.7, exposedStrict: 2.4 },
  },
  mark: 'S',
  source: 'TCNA EJ171',
};

/** United Kingdom floors: longest side of a bay in metres; heated floors have a shorter side and an area in m². */
export const MOVEMENT_UK: Fact<{ side: number; heatedSide: number; heatedAreaM2: number }> = {
  value: { side: 10, heatedSide: 8, heatedAreaM2: 40 },
  mark: 'S',
  source: 'BS 5385-3',
};

/** Joints of the base are carried up through the tile. */
export const SOFT_JOINT_CARRIED: Fact<boolean> = { value: true, mark: 'S', source: 'TCNA EJ171' };

/**
 * Greatest distance between movement joints, in ticks.
 *
 * @example
 * bayLimit('dry') //=> 2438400
 * bayLimit('dry', true) //=> 1170432
 * bayLimit('dry', false, 'mm') //=> 2432000
 */
export function bayLimit(exposure: Exposure, heated = false, system: System = 'inches'): Ticks {
  const kind = exposure === 'dry' && !heated ? 'dry' : 'exposed';
  const { feet: inFeet, metres } = MOVEMENT.value;
  return system === 'mm' ? millimetres(1000 * metres[kind]) : feet(inFeet[kind]);
}

/**
 * Number of equal bays that a length needs and the length of each, in ticks, not rounded.
 *
 * @example
 * movementBays(2535936, 2438400) //=> { bays: 2, each: 1267968 }
 */
export function movementBays(length: Ticks, limit: Ticks): { readonly bays: number; readonly each: number } {
  const bays = Math.max(1, Math.ceil(length / limit));
  return { bays, each: length / bays };
}

/**
 * Bays along and across a floor in the United Kingdom: the fewest, then the squarest, that keep the limits. Ticks.
 *
 * @example
 * movementBaysUk(4480000, 2880000, false) //=> [2, 1]
 * movementBaysUk(2880000, 1920000, true) //=> [2, 1]
 */
export function movementBaysUk(length: Ticks, width: Ticks, heated: boolean): readonly [number, number] {
  const { side, heatedSide, heatedAreaM2 } = MOVEMENT_UK.value;
  const limit = millimetres(1000 * (heated ? heatedSide : side));
  const area = heated ? heatedAreaM2 * millimetres(1000) ** 2 : Number.POSITIVE_INFINITY;
  let [along, across] = [movementBays(length, limit).bays, movementBays(width, limit).bays];
  while ((length / along) * (width / across) > area) {
    if (length / along >= width / across) along += 1;
    else across += 1;
  }
  return [along, across];
}
