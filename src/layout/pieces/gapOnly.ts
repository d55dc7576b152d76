import type { Shape } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { distanceToFace, type Face } from '../frame/Face.ts';

/** A tick of rounding must not make a strip out of what is gap. */
const ROUNDING = 1;

/**
 * Whether a cut is so thin that it is better left out: strip, joint and gap together are no more than one of
 * the faces that cut it still covers. All of the strip lies that near to that face, so whatever covers the
 * face covers it. Gives that face and the gap that results, or null.
 */
export function gapOnly(
  shape: Shape,
  faces: readonly Face[],
  concerned: readonly number[],
  joint: Ticks,
): { face: number; gap: Ticks } | null {
  let best: { face: number; gap: Ticks } | null = null;
  for (const index of concerned) {
    const face = faces[index]!;
    const gap = gapWithout(shape, face, joint);
    if (gap !== undefined && (!best || gap < best.gap)) best = { face: index, gap };
  }
  return best && { face: best.face, gap: Math.min(best.gap, faces[best.face]!.gapMax) };
}

/** The gap before a face without the strip; none where the face no longer covers it, which mostly the first corner tells. */
function gapWithout({ outer }: Shape, face: Face, joint: Ticks): Ticks | undefined {
  let gap = Number.NEGATIVE_INFINITY;
  for (const point of outer) {
    gap = Math.max(gap, Math.round(distanceToFace(face, point)) + joint);
    if (gap > face.gapMax + ROUNDING) return undefined;
  }
  return gap;
}
