import type { Cut } from '../cuts/Cut.ts';
import type { OwnPiece } from '../cuts/TileBox.ts';
import type { Point } from '../geometry/index.ts';
import type { Slides } from './CutClass.ts';

/**
 * How a piece may slide in its tile. An edge on the tile's side holds the piece square to it, but where it lies at a wall. In a tile that is no rectangle none slides.
 *
 * @param edges what its cut tells of them; where that tells none on a side, the longer ones of the piece itself count.
 */
export function slidesOf({ shape, box }: OwnPiece, edges: Cut['edges'] = []): Slides {
  if (box.ring) return { along: false, across: false };
  const held = (axis: 0 | 1) =>
    [0, axis === 0 ? box.length : box.width].some((at) => {
      const lies = (from: Point, to: Point) => Math.abs(from[axis] - at) <= 1 && Math.abs(to[axis] - at) <= 1;
      const ring = shape.outer;
      const told = edges.filter(({ from, to }) => lies(from, to));
      if (told.length > 0) return told.some(({ factory }) => factory);
      return ring.some((from, i) => {
        const to = ring[(i + 1) % ring.length]!;
        return lies(from, to) && Math.hypot(to[0] - from[0], to[1] - from[1]) >= LEAST_EDGE;
      });
    });
  return { along: !held(0), across: !held(1) };
}

/** What is shorter than 1/64 in is the tip of a corner. */
const LEAST_EDGE = 127;
