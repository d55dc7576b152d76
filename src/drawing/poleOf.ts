import { type Point, poleOfInaccessibility, type Shape } from '../geometry/index.ts';

/** A name's deepest spot need not be found nearer than this, in ticks. */
const precision = 3200;

/** What is known, since it is asked for on every sheet that names the shape. */
const poles = new WeakMap<Shape, Point>();

/** The deepest spot of a shape, where its name stands if it has room there. */
export function poleOf(shape: Shape): Point {
  const known = poles.get(shape);
  if (known) return known;
  const pole = poleOfInaccessibility(shape, precision);
  poles.set(shape, pole);
  return pole;
}
