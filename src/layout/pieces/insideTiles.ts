import type { FieldEdge } from '../frame/fieldEdges.ts';
import type { BorderTile } from './borderTiles.ts';
import type { Lattice, Place } from './Lattice.ts';

/** Tiles side by side in one course: `k` and j are the same, i goes from the first to the last. */
export interface InsideStretch {
  readonly k: number;
  readonly j: number;
  readonly first: number;
  readonly last: number;
}

/**
 * The tiles that lie wholly in the field: of those that no edge runs through, the ones whose centre is in
 * it. Found course by course, from where the line through the centres enters the field and leaves it, and
 * parted by the tiles at the field's edge.
 */
export function insideTiles(
  lattice: Lattice,
  edges: readonly FieldEdge[],
  border: Iterable<BorderTile>,
): InsideStretch[] {
  const stretches: InsideStretch[] = [];
  const taken = byCourse(border);
  const ends = edges.map(({ from, to }) => [lattice.repeatsAt(from), lattice.repeatsAt(to)] as const);
  const lowest = ends.reduce((least, [[, v]]) => Math.min(least, v), Infinity);
  const highest = ends.reduce((most, [[, v]]) => Math.max(most, v), -Infinity);
  lattice.boxes.forEach(({ centre }, k) => {
    const last = Math.floor(highest - centre[1]);
    for (let j = Math.ceil(lowest - centre[1]); j <= last; j++) {
      const cuts = crossingsAt(ends, j + centre[1]);
      const out = taken.get(`${k} ${j}`) ?? [];
      for (let at = 0; at + 1 < cuts.length; at += 2) {
        const from = Math.ceil(cuts[at]! - centre[0]);
        const to = Math.floor(cuts[at + 1]! - centre[0]);
        for (const [first, end] of without(from, to, out)) stretches.push({ k, j, first, last: end });
      }
    }
  });
  return stretches;
}

/** How many tiles stretches hold. */
export function countTiles(stretches: readonly InsideStretch[]): number {
  return stretches.reduce((sum, { first, last }) => sum + last - first + 1, 0);
}

/** The places of all tiles of the stretches. */
export function placesIn(stretches: readonly InsideStretch[]): Place[] {
  return stretches.flatMap(({ k, j, first, last }) =>
    Array.from({ length: last - first + 1 }, (_, n) => ({ k, i: first + n, j })),
  );
}

function byCourse(border: Iterable<BorderTile>): Map<string, number[]> {
  const courses = new Map<string, number[]>();
  for (const { place } of border) {
    const key = `${place.k} ${place.j}`;
    const course = courses.get(key);
    if (course) course.push(place.i);
    else courses.set(key, [place.i]);
  }
  for (const course of courses.values()) course.sort((one, other) => one - other);
  return courses;
}

/** The parts of from … to that hold none of the numbers left out, which come in order. */
function without(from: number, to: number, out: readonly number[]): [number, number][] {
  const parts: [number, number][] = [];
  let next = from;
  for (const i of out) {
    if (i < next) continue;
    if (i > to) break;
    if (i > next) parts.push([next, i - 1]);
    next = i + 1;
  }
  if (next <= to) parts.push([next, to]);
  return parts;
}

type Ends = readonly (readonly [readonly [number, number], readonly [number, number]])[];

function crossingsAt(ends: Ends, v: number): number[] {
  const cuts: number[] = [];
  for (const [[ua, va], [ub, vb]] of ends) {
    if (va > v !== vb > v) cuts.push(ua + ((v - va) / (vb - va)) * (ub - ua));
  }
  return cuts.sort((one, other) => one - other);
}
