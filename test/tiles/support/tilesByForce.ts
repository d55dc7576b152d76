import { convexHull, distanceShapes, type Point, type Ring } from '../../../src/geometry/index.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { canSaw, isEdge, mayTurn, outlineOf, type Rules, sizeOf, toTile, turnedBy } from './judgePlan.ts';
import { keptOffcut, type SawLine, sawLines } from './keptOffcut.ts';

/** Cut pieces of a floor that are the same in their tiles, and every set of them that cuts right across part in one tile, the kerf between. */
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
  const kinds = new Map<string, { ring: Ring; size: Point; outline: Ring; names: string[] }>();
  for (const piece of layout.pieces.filter(({ whole }) => !whole)) {
    const ring = piece.shape.outer.map((point) => toTile(point, piece));
    const kind = kinds.get(JSON.stringify(ring)) ?? {
      ring,
      size: sizeOf(piece),
      outline: outlineOf(piece),
      names: [],
    };
    kinds.set(JSON.stringify(ring), { ...kind, names: [...kind.names, piece.id] });
  }
  const all = [...kinds.values()];
  const lying = all.map(({ ring, size, outline }, kind) =>
    DEGREES.filter((degrees) => mayTurn(degrees, turns, outline)).map((degrees) =>
      slid(ring, size, outline).map((at): Lying => {
        const lies = convexHull(at.map((point) => turned(point, degrees, size)));
        return { kind, ring: lies, lines: sawLines(lies, outline, kerf) };
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
    // Three may lie a kerf apart, like sails of a mill, and no cut right across part one of them from the others.
    if (
      chosen.length > 2 &&
      !canSaw(
        chosen.map(({ ring }) => ring),
        kerf - 1e-6,
      )
    )
      return;
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

/** Turns that bring a square, a hexagon or an octagon onto its own place. */
const DEGREES = [0, 45, 60, 90, 120, 135, 180, 225, 240, 270, 300, 315];

function turned([x, y]: Point, degrees: number, [length, width]: Point): Point {
  const [u, v] = turnedBy([x - length / 2, y - width / 2], degrees);
  return [u + length / 2, v + width / 2];
}

/** In a tile that is no rectangle a piece is tried at its own place only. */
function slid(ring: Ring, size: Point, outline: Ring): Ring[] {
  if (outline.length > 4) return [[...ring]];
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
