import { intersect, offsetShapes, type Point, pointInShape, type Shape } from '../geometry/index.ts';
import { LAYING_REACH, PASSAGE } from '../trade/index.ts';

/** Where a person can stand: what he comes to from the way out, what he does not, and the floor that he reaches from there. */
export interface Standing {
  readonly own: Shape;
  readonly others: readonly Shape[];
  readonly reached: readonly Shape[];
}

/** Nobody lays tile through what is narrower, such as a joint or the gap at a wall. */
const SLIT = PASSAGE.value / 12;

/** Standing room on bare floor for whoever comes from a point beyond the way out; undefined where nobody passes through it. */
export function standingOn(bare: readonly Shape[], out: Point): Standing | undefined {
  const half = PASSAGE.value / 2;
  const stands = offsetShapes(bare, -half);
  const own = stands.find((shape) => pointInShape(out, shape));
  if (!own) return undefined;
  const floor = offsetShapes(bare, -SLIT / 2, SLIT / 2);
  const within = intersect(offsetShapes([own], half + LAYING_REACH.value), floor);
  const reached = within.filter((shape) => pointInShape(own.outer[0]!, shape));
  return { own, others: stands.filter((shape) => shape !== own), reached };
}

/** Whether a person lays a shape from where he comes to, as far as the floor goes that he reaches. */
export function isInReach({ outer }: Shape, { reached }: Standing): boolean {
  return outer.some((point) => reached.some((one) => pointInShape(point, one)));
}
