import { convexHull, distanceShapes, type Point, type Ring } from '../../../src/geometry/index.ts';
import type { TileSpec } from '../../../src/job/Job.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { isEdge, type Rules, sizeOf, toTile } from './judgePlan.ts';
import { keptOffcut, type SawLine, sawLines } from './keptOffcut.ts';

/** Cut pieces of a floor that are the same in their tiles, and every set of them that lies in one tile with the kerf between. */
export interface ForcedTiles {
  readonly alike: readonly (readonly string[])[];
  readonly sets: readonly (readonly number[])[];
}

interface Lying {
  readonly kind: number;
  readonly ring: Ring;
  readonly lines: readonly SawLine[];
}

/** Tries every piece in every turn that its tile allows, with offcuts that are kept, sliding those whose joint edges have one direction in steps of an inch. */
export function tilesByForce(
  layout: Layout,
  { kerf, narrowest, turns }: Pick<Rules, 'kerf' | 'narrowest' | 'turns'>,
): ForcedTiles {
  const kinds = new Map<string, { ring: Ring; size: Point; names: string[] }>();
  for (const piece of layout.pieces.filter(({ whole }) => !whole)) {
    const ring = piece.shape.outer.map((point) => toTile(point, piece));
    const kind = kinds.get(JSON.stringify(ring)) ?? { ring, size: sizeOf(piece), names: [] };
    kinds.set(JSON.stringify(ring), { ...kind, names: [...kind.names, piece.id] });
  }
  const all = [...kinds.values()];
  const lying = all.map(({ ring, size }, kind) =>
    quartersOf(turns, size).map((quarter) =>
      slid(ring, size).map((at): Lying => {
        const lies = convexHull(at.map((point) => turned(point, quarter, size)));
        return { kind, ring: lies, lines: sawLines(lies, size, kerf) };
      }),
    ),
  );
  const kept = (a: Lying, b: Lying) => keptOffcut(a.lines, b.ring, { kerf, narrowest });
  const apart = (a: Lying, b: Lying) =>
    distanceShapes({ outer: a.ring, holes: [] }, { outer: b.ring, holes: [] }) >= kerf - 1e-6 &&
    kept(a, b) &&
    kept(b, a);
  const sets = new Map<string, number[]>();
  const grow = (chosen: readonly Lying[], others: readonly Lying[]) => {
    const set = chosen.map(({ kind }) => kind);
    sets.set(set.join(), set);
    others.forEach((next, i) => {
      if (set.filter((kind) => kind === next.kind).length >= all[next.kind]!.names.length) return;
      grow(
        [...chosen, next],
        others.slice(i).filter((other) => apart(next, other)),
      );
    });
  };
  for (const [kind, ways] of lying.entries()) {
    const others = lying.slice(kind).flat(2);
    for (const first of ways[0]!)
      grow(
        [first],
        others.filter((other) => apart(first, other)),
      );
  }
  return { alike: all.map(({ names }) => names), sets: [...sets.values()] };
}

function quartersOf(turns: TileSpec['turns'], [length, width]: Point): readonly number[] {
  if (turns === 'none') return [0];
  return turns === 'any' && length === width ? [0, 1, 2, 3] : [0, 2];
}

function turned([x, y]: Point, quarters: number, [length, width]: Point): Point {
  if (quarters === 2) return [length - x, width - y];
  return quarters === 0 ? [x, y] : quarters === 1 ? [width - y, x] : [y, length - x];
}

function slid(ring: Ring, size: Point): Ring[] {
  const on = (axis: 0 | 1) =>
    ring.some((point, i) => {
      const next = ring[(i + 1) % ring.length]!;
      const along = (at: number) => [point, next].every((end) => Math.abs(end[axis] - at) <= 1);
      return isEdge(point, next) && [0, size[axis]].some(along);
    });
  const steps = (axis: 0 | 1) => {
    if (on(axis)) return [0];
    const along = ring.map((point) => point[axis]);
    const [least, most] = [-Math.min(...along), size[axis] - Math.max(...along)];
    const moves = [0, most];
    for (let move = least; move < most; move += 8128) moves.push(move);
    return moves;
  };
  const [xs, ys] = [steps(0), steps(1)];
  return xs.flatMap((x) => ys.map((y) => ring.map(([px, py]): Point => [px + x, py + y])));
}
