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
    const depth = Math.max(...shape.outer.map((point) => distanceToFace(face, point)));
    const gap = Math.round(depth) + joint;
    if (gap <= face.gapMax + ROUNDING && (!best || gap < best.gap)) best = { face: index, gap };
  }
  return best && { face: best.face, gap: Math.min(best.gap, faces[best.face]!.gapMax) };
}
