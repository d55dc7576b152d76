import { type Point, poleOfInaccessibility, type Shape } from '../geometry/index.ts';
import type { NameRequest } from './nameBlock.ts';
import { type Scale, toPaper } from './Scale.ts';

/** A name's deepest spot need not be found nearer than this, in ticks. */
const precision = 3200;

/** The deepest spot of a shape, which is asked for on every sheet that names it. */
const poles = new WeakMap<Shape, Point>();

function poleOf(shape: Shape): Point {
  const known = poles.get(shape);
  if (known) return known;
  const pole = poleOfInaccessibility(shape, precision);
  poles.set(shape, pole);
  return pole;
}

/** What asks for a name on the paper: a shape in ticks, and the number of its cut where there is one. */
export function nameRequest(name: string, shape: Shape, scale: Scale, number?: number): NameRequest {
  const rings = [shape.outer, ...shape.holes].map((ring) => ring.map((point) => toPaper(scale, point)));
  const pole = toPaper(scale, poleOf(shape));
  return number === undefined ? { name, rings, pole } : { name, rings, pole, number };
}
