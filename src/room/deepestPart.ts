import { distancePointSegment, type Point, poleOfInaccessibility, type Shape } from '../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../measure/index.ts';

/** As far as this two things may lap each other: the tape's slack and the room's own correction. */
const LAP: Ticks = TICKS_PER_INCH;

/** How near the deepest point is looked for, in ticks. */
const PRECISION = 64;

/** Where a part is deepest, and how deep it is there. */
export interface Deepest {
  readonly at: Point;
  readonly deep: Ticks;
}

/**
 * Of the parts in which two things lap, the deepest that no taping explains, being more than an inch; undefined where
 * there is none. A part is as deep as twice the largest circle in it.
 */
export function deepestPart(parts: readonly Shape[]): Deepest | undefined {
  const found = parts.map((shape): Deepest => {
    const at = poleOfInaccessibility(shape, PRECISION);
    const sides = [shape.outer, ...shape.holes].flatMap((ring) =>
      ring.map((point, i) => [point, ring[(i + 1) % ring.length]!] as const),
    );
    return { at, deep: 2 * Math.min(...sides.map(([a, b]) => distancePointSegment(at, a, b))) };
  });
  const [worst] = found.sort((a, b) => b.deep - a.deep);
  return worst && worst.deep > LAP + 2 * PRECISION ? worst : undefined;
}
