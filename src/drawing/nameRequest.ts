import { poleOfInaccessibility, type Shape } from '../geometry/index.ts';
import type { NameRequest } from './nameBlock.ts';
import { type Scale, toPaper } from './Scale.ts';

/** A name's deepest spot need not be found nearer than this, in ticks. */
const precision = 3200;

/** What asks for a name on the paper: a shape in ticks, and the number of its cut where there is one. */
export function nameRequest(name: string, shape: Shape, scale: Scale, number?: number): NameRequest {
  const rings = [shape.outer, ...shape.holes].map((ring) => ring.map((point) => toPaper(scale, point)));
  const pole = toPaper(scale, poleOfInaccessibility(shape, precision));
  return number === undefined ? { name, rings, pole } : { name, rings, pole, number };
}
