import { bounds, type Point, type Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Placement } from './CutClass.ts';
import { linesPart } from './linesPart.ts';
import { slidTo } from './placementsOf.ts';
import { slideStops } from './slideStops.ts';

/** What a plan keeps to: the blade's width, and which two pieces leave offcuts worth keeping. */
export interface Parting {
  readonly kerf: Ticks;
  readonly enough: (a: Placement, b: Placement) => boolean;
}

/** Where pieces lie in their tile so that the saw can part them, those that slide moved to where they stay; undefined where no place was found. */
export function settleTile(
  placements: readonly Placement[],
  parting: Parting,
): readonly Placement[] | undefined {
  const at = placements.findIndex(({ slides }) => slides.along || slides.across);
  if (at < 0) return parts(placements, parting) ? placements : undefined;
  if (placements.length === 1) return [slidTo(placements[0]!, [0, 0])];
  const others = placements.filter(({ slides }) => !slides.along && !slides.across);
  for (const move of movesOf(placements[at]!, others, parting)) {
    const moved = placements.map((one, i) => (i === at ? slidTo(one, move) : one));
    const settled = settleTile(moved, parting);
    if (settled) return settled;
  }
  return undefined;
}

function parts(placements: readonly Placement[], { kerf, enough }: Parting): boolean {
  const rings = placements.map(({ ring }) => ring);
  return placements.every((a, i) => placements.slice(i + 1).every((b) => enough(a, b))) && linesPart(rings, kerf); // biome-ignore format: two questions on a line
}

/** Its own place, against the tile's sides, and a kerf beside each of the others: those where it fits, found as they are asked for. */
function* movesOf(
  { of, ring, slides }: Placement,
  others: readonly Placement[],
  { kerf }: Parting,
): Generator<Point> {
  const box = bounds(ring);
  const [length, width] = [of.box.length, of.box.width];
  const xs = slides.along ? [0, -box.minX, length - box.maxX] : [0];
  const ys = slides.across ? [0, -box.minY, width - box.maxY] : [0];
  const isInside = ([x, y]: Point) =>
    box.minX + x >= 0 && box.maxX + x <= length && box.minY + y >= 0 && box.maxY + y <= width;
  const fits = (move: Point) => {
    if (!isInside(move) && (move[0] !== 0 || move[1] !== 0)) return false;
    const there = moved(ring, move);
    return others.every((other) => linesPart([there, other.ring], kerf));
  };
  const stops = (way: Point, at: Point) => others.flatMap((other) => stopsBeside(moved(ring, at), way, other, kerf)); // biome-ignore format: one line
  for (const x of xs) for (const y of ys) if (fits([x, y])) yield [x, y];
  if (slides.along) for (const y of ys) for (const x of stops([1, 0], [0, y])) if (fits([x, y])) yield [x, y];
  if (slides.across)
    for (const x of xs) for (const y of stops([0, 1], [x, 0])) if (fits([x, y])) yield [x, y];
}

function moved(ring: Ring, [dx, dy]: Point): Ring {
  return ring.map(([x, y]): Point => [x + dx, y + dy]);
}

function stopsBeside(ring: Ring, way: Point, other: Placement, kerf: Ticks): number[] {
  const found = slideStops(ring, way, other.ring, kerf);
  return found ? [Math.floor(found[0]), Math.ceil(found[1])] : [];
}
