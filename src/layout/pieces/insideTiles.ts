import type { FieldEdge } from '../frame/fieldEdges.ts';
import { keyOf, type Lattice, type Place } from './Lattice.ts';

/**
 * The tiles that lie wholly in the field: of those that no edge runs through, the ones whose centre is in
 * it. Found course by course, from where the line through the centres enters the field and leaves it.
 */
export function insideTiles(
  lattice: Lattice,
  edges: readonly FieldEdge[],
  border: ReadonlyMap<number, unknown>,
): Place[] {
  const places: Place[] = [];
  const ends = edges.map(({ from, to }) => [lattice.repeatsAt(from), lattice.repeatsAt(to)] as const);
  const lowest = ends.reduce((least, [[, v]]) => Math.min(least, v), Infinity);
  const highest = ends.reduce((most, [[, v]]) => Math.max(most, v), -Infinity);
  lattice.boxes.forEach(({ centre }, k) => {
    const last = Math.floor(highest - centre[1]);
    for (let j = Math.ceil(lowest - centre[1]); j <= last; j++) {
      const cuts = crossingsAt(ends, j + centre[1]);
      for (let at = 0; at + 1 < cuts.length; at += 2) {
        const stop = Math.floor(cuts[at + 1]! - centre[0]);
        for (let i = Math.ceil(cuts[at]! - centre[0]); i <= stop; i++) {
          const place = { k, i, j };
          if (!border.has(keyOf(place))) places.push(place);
        }
      }
    }
  });
  return places;
}

type Ends = readonly (readonly [readonly [number, number], readonly [number, number]])[];

function crossingsAt(ends: Ends, v: number): number[] {
  const cuts: number[] = [];
  for (const [[ua, va], [ub, vb]] of ends) {
    if (va > v !== vb > v) cuts.push(ua + ((v - va) / (vb - va)) * (ub - ua));
  }
  return cuts.sort((one, other) => one - other);
}
