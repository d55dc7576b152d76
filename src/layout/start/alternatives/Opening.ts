import { type Box, bounds, type Point } from '../../../geometry/index.ts';
import type { Ticks } from '../../../measure/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import { isFold } from '../../../room/isFold.ts';
import type { Ground } from '../../frame/Ground.ts';
import { makeLattice, ringAt } from '../../pieces/Lattice.ts';

/** An opening in the floor with its gap: a circle, or something square. */
export interface FloorOpening {
  readonly name: string;
  readonly box: Box;
  readonly circle?: { readonly centre: Point; readonly radius: Ticks };
}

/** How an opening lies in the tiles: how many it touches, and how many webs are thinner than the least. */
export interface Touched {
  readonly tiles: number;
  readonly thinWebs: number;
  /** Lies wholly inside one tile. */
  readonly inside: boolean;
}

/** Openings no larger than a tile and a half: larger ones are balanced on, not moved clear of joints. */
export function smallOpenings({ frame }: Ground, { module }: Pattern): FloorOpening[] {
  const standing = frame.obstacles.filter((one) => !isFold(one));
  return standing.flatMap(({ name, cleared, circle }): FloorOpening[] => {
    const box = bounds(cleared);
    if (box.maxX - box.minX > 1.5 * module[0] || box.maxY - box.minY > 1.5 * module[1]) return [];
    if (!circle) return [{ name, box }];
    const { centre, clearRadius: radius } = circle;
    const [x, y] = centre;
    const round = { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius };
    return [{ name, box: round, circle: { centre, radius } }];
  });
}

/** A tick or two of rounding is no contact and no thin web. */
const ROUNDING: Ticks = 2;

/** How an opening would lie in the tiles with the pattern at this origin. */
export function touchedBy(opening: FloorOpening, pattern: Pattern, origin: Point, minWeb: Ticks): Touched {
  const lattice = makeLattice(pattern, origin);
  const { minX, minY, maxX, maxY } = opening.box;
  const corners = [lattice.repeatsAt([minX, minY]), lattice.repeatsAt([maxX, minY])];
  const others = [lattice.repeatsAt([minX, maxY]), lattice.repeatsAt([maxX, maxY])];
  const reach = (axis: 0 | 1) => [...corners, ...others].map((at) => at[axis]);
  let [tiles, thinWebs, inside] = [0, 0, false];
  lattice.boxes.forEach(({ min, max }, k) => {
    for (let j = Math.floor(Math.min(...reach(1)) - max[1]); j <= Math.max(...reach(1)) - min[1]; j++) {
      for (let i = Math.floor(Math.min(...reach(0)) - max[0]); i <= Math.max(...reach(0)) - min[0]; i++) {
        const tile = bounds(ringAt(lattice, { k, i, j }));
        const cut = cutIn(opening, tile);
        if (!cut) continue;
        const webs = [cut.minX - tile.minX, tile.maxX - cut.maxX, cut.minY - tile.minY, tile.maxY - cut.maxY];
        tiles += 1;
        thinWebs += webs.filter((web) => web > ROUNDING && web < minWeb - ROUNDING).length;
        inside ||= webs.every((web) => web > ROUNDING);
      }
    }
  });
  return { tiles, thinWebs, inside };
}

/** The box of what an opening takes out of a tile; null where it takes nothing. */
function cutIn({ box, circle }: FloorOpening, tile: Box): Box | null {
  let { minX, minY, maxX, maxY } = box;
  if (circle) {
    const [x, y] = circle.centre;
    const wide = halfChord(circle.radius, clamp(y, tile.minY, tile.maxY) - y);
    const high = halfChord(circle.radius, clamp(x, tile.minX, tile.maxX) - x);
    [minX, maxX, minY, maxY] = [x - wide, x + wide, y - high, y + high];
  }
  const cut = {
    minX: Math.max(minX, tile.minX),
    minY: Math.max(minY, tile.minY),
    maxX: Math.min(maxX, tile.maxX),
    maxY: Math.min(maxY, tile.maxY),
  };
  return cut.maxX - cut.minX > ROUNDING && cut.maxY - cut.minY > ROUNDING ? cut : null;
}

function halfChord(radius: number, off: number): number {
  return Math.sqrt(Math.max(0, radius * radius - off * off));
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
