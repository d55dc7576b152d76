import type { Fact } from './Fact.ts';

/** Share of boards and membranes bought beyond the area that they cover. */
export const LAYER_WASTE: Fact<number> = { value: 0.1, mark: 'P', source: 'practice' };
