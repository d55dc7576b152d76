import type { Fact } from './Fact.ts';

/** Share of all tile that stays with the owner, least and most, of the same lot; or a whole carton. */
export const KEEP: Fact<readonly [number, number]> = { value: [0.02, 0.05], mark: 'P', source: 'practice' };

/** Spare tiles for each hole or notch cut inside a tile, which breaks more easily than others. */
export const SPARE_PER_INSIDE_CUT: Fact<number> = { value: 1, mark: 'P', source: 'practice' };

/** Years that a line of tile or an opened bag of grout can be counted on. */
export const KEEPS_YEARS: Fact<number> = { value: 3, mark: 'P', source: 'practice' };

/** Share of boards and membranes bought beyond the area that they cover. */
export const LAYER_WASTE: Fact<number> = { value: 0.1, mark: 'P', source: 'practice' };
