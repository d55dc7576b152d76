/** A place in the plane in ticks, x to the right and y up. */
export type Point = readonly [x: number, y: number];
