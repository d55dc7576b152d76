import { bounds, distancePoints, type Ring, type Shape } from '../../geometry/index.ts';
import type { Face } from '../frame/Face.ts';
import { isPlain } from './isPlain.ts';
import type { LaidPiece } from './LaidPiece.ts';
import type { Place } from './Lattice.ts';
import { type Run, sawnRuns } from './sawnRuns.ts';
import { unbend, wallCurves } from './unbend.ts';
import { webOf } from './webOf.ts';

/**
 * A piece cut from the tile `ring` by the faces of that place in the list, and all that is judged about it. A bend of up to `flat`
 * ticks is sawn straight.
 */
export function cutPiece(
  place: Place,
  ring: Ring,
  shape: Shape,
  own: readonly number[],
  faces: readonly Face[],
  flat: number,
): LaidPiece {
  const box = bounds(shape.outer);
  const full = bounds(ring);
  const extent = [box.maxX - box.minX, box.maxY - box.minY] as const;
  const cutBy = own.map((index) => faces[index]!);
  const sawn = unbend(shape, ring, wallCurves(cutBy), flat);
  const hard = sawn.curved || !isPlain(sawn.shape);
  return {
    place,
    ring,
    shape,
    whole: false,
    faces: own,
    extent,
    shares: [extent[0] / (full.maxX - full.minX), extent[1] / (full.maxY - full.minY)],
    seen: bestSeen(cutBy),
    sawn: sawnLength(shape, ring),
    hard,
    web: hard ? webOf(sawn.shape, ring) : null,
  };
}

const SEEN = ['hidden', 'plain', 'focal'] as const;

/** The best-seen of the faces that cut it: hidden only where all of them are. */
function bestSeen(faces: readonly Face[]): Face['seen'] {
  let best = 0;
  for (const { seen } of faces) best = Math.max(best, SEEN.indexOf(seen));
  return SEEN[best]!;
}

function sawnLength({ outer, holes }: Shape, ring: Ring): number {
  const runs = [...sawnRuns(outer, ring), ...holes.map((hole) => [...hole, hole[0]!])];
  return Math.round(runs.reduce((sum, run) => sum + runLength(run), 0));
}

function runLength(run: Run): number {
  return run.reduce((sum, point, i) => sum + distancePoints(run[i - 1] ?? point, point), 0);
}
