import { bounds } from './bounds.ts';
import { distancePointSegment } from './distance.ts';
import type { Point } from './Point.ts';
import { pointInShape } from './pointInShape.ts';
import type { Shape } from './Shape.ts';

/** A square of the search: its middle, half its side, the middle's depth and the depth it may reach. */
interface Cell {
  readonly at: Point;
  readonly half: number;
  readonly depth: number;
  readonly most: number;
}

/**
 * The point of a shape that lies deepest inside it, in whole ticks, within `precision` ticks of the
 * greatest depth: the place for a label.
 *
 * @example poleOfInaccessibility({outer: [[0, 0], [100, 0], [100, 100], [0, 100]], holes: []}, 1) //=> [50, 50]
 */
export function poleOfInaccessibility(shape: Shape, precision: number): Point {
  let open = firstCells(shape);
  let best = open.reduce((a, b) => (b.depth > a.depth ? b : a));
  // Every round quarters the squares that may still hold a deeper point than the best so far.
  while (open.length > 0) {
    const next: Cell[] = [];
    for (const cell of open) {
      if (cell.most <= best.depth + precision) continue;
      for (const part of quarters(shape, cell)) {
        if (part.depth > best.depth) best = part;
        next.push(part);
      }
    }
    open = next;
  }
  return [Math.round(best.at[0]), Math.round(best.at[1])];
}

function firstCells(shape: Shape): Cell[] {
  const { minX, minY, maxX, maxY } = bounds(shape.outer);
  const [width, height] = [maxX - minX, maxY - minY];
  // Squares as wide as the shape is narrow, but never more than 64 of them along a thin strip.
  const size = Math.max(1, Math.min(width, height), Math.max(width, height) / 64);
  const [columns, rows] = [Math.ceil(width / size) || 1, Math.ceil(height / size) || 1];
  const [w, h] = [width / columns, height / rows];
  return Array.from({ length: columns * rows }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    return cellAt(shape, [minX + (column + 0.5) * w, minY + (row + 0.5) * h], Math.max(w, h) / 2);
  });
}

function quarters(shape: Shape, { at: [x, y], half }: Cell): Cell[] {
  const q = half / 2;
  const middles: Point[] = [
    [x - q, y - q],
    [x + q, y - q],
    [x - q, y + q],
    [x + q, y + q],
  ];
  return middles.map((middle) => cellAt(shape, middle, q));
}

function cellAt(shape: Shape, at: Point, half: number): Cell {
  const depth = depthIn(shape, at);
  return { at, half, depth, most: depth + half * Math.SQRT2 };
}

/** How deep a point lies inside; how far outside, as a negative number. */
function depthIn(shape: Shape, point: Point): number {
  let least = Infinity;
  for (const ring of [shape.outer, ...shape.holes]) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      least = Math.min(least, distancePointSegment(point, a, b));
      a = b;
    }
  }
  return pointInShape(point, shape) ? least : -least;
}
