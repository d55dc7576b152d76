import type { TileBox } from '../cuts/TileBox.ts';
import { clipConvex, narrowness, type Point, type Ring, side } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Placement } from './CutClass.ts';
import { ringOfBox } from './ringOfBox.ts';

/** What the saw and the setter keep to in a tile. */
export interface Sawing {
  /** Width that the blade takes. */
  readonly kerf: Ticks;
  /** A narrower offcut is not kept for another piece. */
  readonly narrowest: Ticks;
}

/** How wide an offcut the saw line along an edge of a piece leaves: by the place of the edge in the ring. */
export type LeftBeyond = (placement: Placement, edge: number) => number;

/**
 * Whether what is left beyond a piece, when it is sawn off along the edge towards another, is wide enough to be kept for that.
 * Where several of its edges part the two the widest offcut counts; where none does, the cut is slanted and nothing is asked.
 *
 * @param spare ticks by which it may be less, for what rounding moved.
 */
export function leavesEnough(
  placement: Placement,
  other: Placement,
  { kerf, narrowest }: Sawing,
  left: LeftBeyond,
  spare = 0,
): boolean {
  if (narrowest <= 0) return true;
  const { ring } = placement;
  let parted = false;
  for (let i = 0; i < ring.length; i++) {
    const out = leastOutside(ring[i]!, ring[(i + 1) % ring.length]!, other.ring);
    if (out < kerf - spare) continue;
    if (left(placement, i) >= narrowest - spare) return true;
    if (out >= kerf) parted = true;
  }
  return !parted;
}

/** Widths of offcuts, kept for each ring: many pieces lie beside the same one. */
export function keptLeft(kerf: Ticks): LeftBeyond {
  const kept = new Map<Ring, (number | undefined)[]>();
  return ({ ring, of }, edge) => {
    const widths = kept.get(ring) ?? [];
    kept.set(ring, widths);
    widths[edge] ??= leftBeyond(ring[edge]!, ring[(edge + 1) % ring.length]!, of.box, kerf);
    return widths[edge];
  };
}

/** The narrowest offcut that any saw line along an edge of a piece leaves; sides of the tile leave none. */
export function leastLeft(placement: Placement, left: LeftBeyond): number {
  const widths = placement.ring.map((_, edge) => left(placement, edge));
  return Math.min(...widths.filter((width) => width > 0));
}

function leastOutside(from: Point, to: Point, ring: Ring): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return ring.reduce((least, point) => Math.min(least, -side(from, to, point) / length), Infinity);
}

/** How wide the part of the tile is that lies a kerf and more to the right of a line; 0 where there is none. */
function leftBeyond(from: Point, to: Point, box: TileBox, kerf: Ticks): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const far = 2 * (box.length + box.width);
  const at = (along: number, out: number): Point => [
    from[0] + along * ux + out * uy,
    from[1] + along * uy - out * ux,
  ];
  const beyond = [at(-far, kerf), at(-far, far), at(far, far), at(far, kerf)];
  return Math.max(0, ...clipConvex(ringOfBox(box), beyond).map(narrowness));
}
