import type { Point } from './Point.ts';

/**
 * A closed line through points; the first is not repeated. An outer ring runs counter-clockwise, a hole
 * clockwise, so what is inside always lies on the left.
 */
export type Ring = readonly Point[];
