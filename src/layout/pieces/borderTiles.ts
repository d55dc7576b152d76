import type { Ring } from '../../geometry/index.ts';
import type { FieldEdge } from '../frame/fieldEdges.ts';
import { keyOf, type Lattice, type Place, ringAt } from './Lattice.ts';
import { type Through, throughTile } from './throughTile.ts';

/** A tile that edges of the field run through, by their place in the list of edges. */
export interface BorderTile {
  readonly place: Place;
  readonly ring: Ring;
  readonly crossings: Map<number, Through>;
}

/** Rounding must not leave out a tile that only just reaches an edge; what does not is sorted out exactly. */
const HAIR = 1e-9;

/** The tiles through whose inside an edge of the field runs. All other tiles lie wholly in or wholly out. */
export function borderTiles(lattice: Lattice, edges: readonly FieldEdge[]): Map<number, BorderTile> {
  const found = new Map<number, BorderTile>();
  edges.forEach(({ from, to }, edge) => {
    for (const place of placesNear(lattice, from, to)) {
      const key = keyOf(place);
      const known = found.get(key);
      const ring = known?.ring ?? ringAt(lattice, place);
      const through = throughTile(ring, from, to);
      if (!through) continue;
      if (known) known.crossings.set(edge, through);
      else found.set(key, { place, ring, crossings: new Map([[edge, through]]) });
    }
  });
  return found;
}

/** Tiles whose box, in repeats, comes near a segment: course by course, those the segment passes there. */
function placesNear(lattice: Lattice, from: FieldEdge['from'], to: FieldEdge['to']): Place[] {
  const places: Place[] = [];
  const [ua, va] = lattice.repeatsAt(from);
  const [ub, vb] = lattice.repeatsAt(to);
  const [low, high] = [Math.min(va, vb), Math.max(va, vb)];
  lattice.boxes.forEach(({ min, max }, k) => {
    const last = Math.floor(high - min[1] + HAIR);
    for (let j = Math.ceil(low - max[1] - HAIR); j <= last; j++) {
      const [s, t] = [part(va, vb, j + min[1]), part(va, vb, j + max[1])];
      const [us, ut] = [ua + s * (ub - ua), ua + t * (ub - ua)];
      const [start, end] =
        va === vb ? [Math.min(ua, ub), Math.max(ua, ub)] : [Math.min(us, ut), Math.max(us, ut)];
      const stop = Math.floor(end - min[0] + HAIR);
      for (let i = Math.ceil(start - max[0] - HAIR); i <= stop; i++) places.push({ k, i, j });
    }
  });
  return places;
}

/** How far along from va to vb a value lies, kept between 0 and 1. */
function part(va: number, vb: number, value: number): number {
  return Math.min(1, Math.max(0, (value - va) / (vb - va)));
}
