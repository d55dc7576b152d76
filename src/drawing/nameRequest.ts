import type { Shape } from '../geometry/index.ts';
import type { NameRequest } from './nameBlock.ts';
import { poleOf } from './poleOf.ts';
import { type Scale, toPaper } from './Scale.ts';

/** What asks for a name on the paper: a shape in ticks, and the number of its cut where there is one. */
export function nameRequest(name: string, shape: Shape, scale: Scale, number?: number): NameRequest {
  const rings = [shape.outer, ...shape.holes].map((ring) => ring.map((point) => toPaper(scale, point)));
  const pole = toPaper(scale, poleOf(shape));
  return number === undefined ? { name, rings, pole } : { name, rings, pole, number };
}
