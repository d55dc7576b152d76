import type { Point } from '../../../geometry/index.ts';
import type { Pattern, PatternTile } from '../../../pattern/Pattern.ts';

/** How a pattern looks the same, and what it repeats; steps may be parts of ticks. */
export type Repeat = Pick<Pattern, 'a' | 'b' | 'tiles' | 'joint'>;

/** Rounding moves the tiles of a repeat by no more than this, in ticks. */
const ROUNDING = 1.5;

/**
 * A pattern by its shortest repeat: where all its tiles are one tile moved on by even steps, as courses are in a running bond, that
 * tile alone; else the repeat it has.
 */
export function leastRepeat({ a, b, tiles, joint }: Repeat): Repeat {
  const [first] = tiles;
  const area = a[0] * b[1] - a[1] * b[0];
  const places = tiles.map((tile): Point | undefined => {
    const by = movedBy(first!, tile);
    return by && [(by[0] * b[1] - by[1] * b[0]) / area, (by[1] * a[0] - by[0] * a[1]) / area];
  });
  const count = tiles.length;
  for (const [u, v] of places.flatMap((place) => (place ? [place] : []))) {
    const [across, up] = [Math.round(count * u), Math.round(count * v)];
    const turn = Array.from({ length: count }, (_, m) => m).find((m) => mod(m * up, count) === 1 % count);
    if (turn === undefined) continue;
    const along = mod(turn * across, count);
    const step: Point = [(along * a[0] + b[0]) / count, (along * a[1] + b[1]) / count];
    const isOn = (place: Point | undefined) => place && isStep(place, along, count, a, b);
    if (places.every(isOn)) return { a, b: step, tiles: [first!], joint };
  }
  return { a, b, tiles, joint };
}

/** How a tile lies from another that is like it to the tick; none where it is another tile. */
function movedBy({ ring: from }: PatternTile, { ring: to }: PatternTile): Point | undefined {
  if (from.length !== to.length) return undefined;
  const [dx, dy] = [to[0]![0] - from[0]![0], to[0]![1] - from[0]![1]];
  const alike = from.every(([x, y], i) => Math.hypot(to[i]![0] - x - dx, to[i]![1] - y - dy) <= ROUNDING);
  return alike ? [dx, dy] : undefined;
}

/** Whether a place, in repeats, is so many steps from the first tile as it is parts of a repeat up. */
function isStep([u, v]: Point, along: number, count: number, a: Point, b: Point): boolean {
  const off = [u - (Math.round(v * count) * along) / count, v - Math.round(v * count) / count] as const;
  const [x, y] = [off[0] - Math.round(off[0]), off[1]];
  return Math.hypot(x * a[0] + y * b[0], x * a[1] + y * b[1]) <= ROUNDING;
}

function mod(value: number, by: number): number {
  return ((value % by) + by) % by;
}
