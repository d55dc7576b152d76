import { convexHull, type Point, type Ring } from '../../../src/geometry/index.ts';
import { partInside } from '../../support/partInside.ts';

/** A saw line along an edge of a piece: how far outside it a point is, and how wide the offcut is that it leaves. */
export interface SawLine {
  readonly out: (point: Point) => number;
  readonly leaves: number;
}

/** The saw lines along the edges of a piece, each with what is left of its tile beyond the blade. */
export function sawLines(piece: Ring, tile: Ring, kerf: number): readonly SawLine[] {
  const hull = convexHull(piece);
  return hull.map(([x, y], i) => {
    const [nx, ny] = hull[(i + 1) % hull.length]!;
    const size = Math.hypot(nx - x, ny - y);
    const out = ([px, py]: Point) => ((px - x) * (ny - y) - (py - y) * (nx - x)) / size;
    return { out, leaves: widthOf(tile, (point) => out(point) - kerf) };
  });
}

/**
 * Whether the offcut in which a second piece lies, once a first is sawn off along an edge, is as wide as one that is kept. The
 * widest of the offcuts that such lines leave counts; where no line along an edge has the second beyond it nothing is asked.
 */
export function keptOffcut(
  lines: readonly SawLine[],
  second: Ring,
  { kerf, narrowest }: { readonly kerf: number; readonly narrowest: number },
): boolean {
  const parting = lines.filter(({ out }) => second.every((point) => out(point) >= kerf));
  // A tick for corners that are rounded.
  return parting.length === 0 || parting.some(({ leaves }) => leaves >= narrowest - 1);
}

/** The least width of the part of a ring where `inside` is not negative: of all directions square to a side or a diagonal of it. */
function widthOf(ring: Ring, inside: (point: Point) => number): number {
  const kept = partInside(ring, inside);
  const widths = kept.flatMap(([x, y]) =>
    kept.flatMap(([ox, oy]) => {
      const size = Math.hypot(ox - x, oy - y);
      if (size < 1) return [];
      const out = kept.map(([px, py]) => ((px - x) * (oy - y) - (py - y) * (ox - x)) / size);
      return [Math.max(...out) - Math.min(...out)];
    }),
  );
  return Math.min(...widths);
}
