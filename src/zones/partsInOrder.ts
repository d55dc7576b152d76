import { lineCrossings } from '../cuts/lineCrossings.ts';
import { bounds, type Point } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { partOf, type Seams } from './seamsOf.ts';
import type { WayOut } from './wayOutOf.ts';
import type { Zone } from './Zone.ts';

/** Pieces set in one go, and the lines on which they stop. */
export interface Part {
  readonly pieces: readonly Piece[];
  readonly seam?: NonNullable<Zone['seam']>;
}

/** A part as the seams make it: on an axis all that lies between two places. */
export interface Band extends Part {
  readonly axis: 0 | 1;
  readonly from: number;
  readonly to: number;
}

/** The parts between the seams in the order of work: the farthest from the way out first, the one that ends at it last. */
export function partsInOrder(layout: Layout, seams: Seams, wayOut: WayOut | undefined): Band[] {
  const { axis, at } = seams;
  const groups = Array.from({ length: at.length + 1 }, (): Piece[] => []);
  for (const piece of layout.pieces) groups[partOf(piece, seams)]!.push(piece);
  const door = wayOut?.at[axis] ?? Number.POSITIVE_INFINITY;
  const parts = groups
    .map((pieces, index) => ({ pieces, index }))
    .filter(({ pieces }) => pieces.length > 0)
    .map((part) => ({ ...part, away: awayFrom(part.pieces, axis, door) }))
    .sort((a, b) => b.away - a.away || a.index - b.index);
  return parts.map(({ pieces, index }, order) => {
    const [from, to] = [at[index - 1] ?? Number.NEGATIVE_INFINITY, at[index] ?? Number.POSITIVE_INFINITY];
    const band = { pieces, axis, from, to };
    if (order === parts.length - 1) return band;
    // It stops at the seam on the side of the way out.
    const end = isBelow(pieces, axis, door) ? to : from;
    return Number.isFinite(end) ? { ...band, seam: [seamLine(layout, axis, end)] } : band;
  });
}

function rangeOf(pieces: readonly Piece[], axis: 0 | 1): readonly [number, number] {
  const box = bounds(pieces.map(({ shape }) => shape.outer));
  return axis === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY];
}

/** How far a part is from the way out along the axis; without one, from the high end. */
function awayFrom(pieces: readonly Piece[], axis: 0 | 1, door: number): number {
  const [low, high] = rangeOf(pieces, axis);
  if (door === Number.POSITIVE_INFINITY) return -low;
  return Math.max(0, low - door, door - high);
}

function isBelow(pieces: readonly Piece[], axis: 0 | 1, door: number): boolean {
  const [low, high] = rangeOf(pieces, axis);
  return (low + high) / 2 < door;
}

function seamLine(layout: Layout, axis: 0 | 1, at: number): NonNullable<Zone['seam']>[number] {
  const along = axis === 0 ? 1 : 0;
  const places = lineCrossings(layout.frame.outline, along, Math.floor(at) + 0.5);
  const [first, last] = [places[0]?.at ?? 0, places[places.length - 1]?.at ?? 0];
  const point = (place: number): Point => (axis === 0 ? [at, place] : [place, at]);
  return { from: point(first), to: point(last) };
}
