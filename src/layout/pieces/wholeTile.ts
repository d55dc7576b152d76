import { bounds, type Ring } from '../../geometry/index.ts';
import type { LaidPiece } from './LaidPiece.ts';
import type { Place } from './Lattice.ts';

/** A tile that nothing cuts, in place. */
export function wholeTile(place: Place, ring: Ring): LaidPiece {
  const { minX, minY, maxX, maxY } = bounds(ring);
  return {
    place,
    ring,
    shape: { outer: ring, holes: [] },
    whole: true,
    faces: [],
    extent: [maxX - minX, maxY - minY],
    shares: [1, 1],
    seen: 'plain',
    sawn: 0,
    hard: false,
    web: null,
  };
}
