import {
  distancePointSegment,
  type Point,
  pointInRing,
  type Ring,
  segmentIntersection,
} from '../geometry/index.ts';
import type { Corner } from '../job/Job.ts';
import { TICKS_PER_INCH } from '../measure/index.ts';
import type { Observation } from './observations.ts';

/** A tape needs this much room beside a corner that sticks out. */
const clearance = TICKS_PER_INCH;

/** Whether it is the distance between two corners. */
export const joins = (one: Observation, i: number, j: number) =>
  (one.kind === 'wall' || one.kind === 'diagonal') &&
  ((one.from === i && one.to === j) || (one.from === j && one.to === i));

/** Whether a tape can be pulled straight from one corner to another without leaving the room. */
export function isInside(ring: Ring, from: number, to: number): boolean {
  const [a, b] = [ring[from]!, ring[to]!];
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const blocked = ring.some((corner, i) => {
    const next = (i + 1) % ring.length;
    if ([i, next].some((end) => end === from || end === to)) return false;
    return segmentIntersection(a, b, corner, ring[next]!) !== null;
  });
  const scraped = ring.some(
    (corner, i) => i !== from && i !== to && distancePointSegment(corner, a, b) < clearance,
  );
  return !blocked && !scraped && pointInRing(middle, ring);
}

/**
 * The diagonal to read next: the longest that lies inside the room and has not been read yet; undefined in a
 * triangle, or where all are read.
 */
export function measureNext(
  names: readonly Corner[],
  ring: Ring,
  seen: readonly Observation[],
): string | undefined {
  const isRead = (i: number, j: number) => seen.some((one) => joins(one, i, j));
  let best: { id: string; length: number } | undefined;
  for (let i = 0; i < ring.length; i++)
    for (let j = i + 2; j < ring.length; j++) {
      if (isRead(i, j) || !isInside(ring, i, j)) continue;
      const length = Math.hypot(ring[j]![0] - ring[i]![0], ring[j]![1] - ring[i]![1]);
      if (!best || length > best.length) best = { id: `${names[i]!.name}-${names[j]!.name}`, length };
    }
  return best?.id;
}
