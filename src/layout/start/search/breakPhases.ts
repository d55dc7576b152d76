import type { CutProfile } from './cutProfile.ts';
import { LENIENT, SET_OUT } from './scoreAt.ts';
import type { WallDirection } from './WallReading.ts';

/** Beside a change, farther than lines may be off, in ticks. */
const FIRM = SET_OUT + 2;

/**
 * The phases, in whole ticks from 0 to one spacing, at which something changes at a wall of a direction: a tile begins to reach
 * past it or stays whole, a strip is wide enough, a cut is half a tile. Between two of them everything changes evenly.
 */
export function breakPhases({ ahead, behind, spacing, readings }: WallDirection): number[] {
  const found = new Set<number>();
  for (const { side, at, absent, kept } of readings) {
    for (const profile of side > 0 ? ahead : behind) {
      const sizes = [profile.strip + LENIENT, halfOf(profile) + SET_OUT];
      for (const depth of [absent, ...sizes, profile.depth - kept]) {
        const phase = side * (at + depth - profile.top);
        const within = phase - Math.floor(phase / spacing) * spacing;
        found.add(Math.round(within - FIRM)).add(Math.round(within + FIRM));
      }
    }
  }
  return [...found].sort((a, b) => a - b);
}

/** The depth at which a cut is no longer less than half a tile. */
function halfOf({ depths, extents, least }: CutProfile): number {
  const place = ([x, y]: readonly [number, number]) =>
    Math.max(0, least[0] - LENIENT - x, least[1] - LENIENT - y);
  for (let i = 1; i < depths.length; i++) {
    const [before, after] = [place(extents[i - 1]!), place(extents[i]!)];
    if (after === 0 && before > 0) {
      const [low, high] = [extents[i - 1]!, extents[i]!];
      const parts = ([0, 1] as const).map((axis) =>
        high[axis] === low[axis] ? 0 : (least[axis] - LENIENT - low[axis]) / (high[axis] - low[axis]),
      );
      return depths[i - 1]! + Math.max(0, ...parts) * (depths[i]! - depths[i - 1]!);
    }
  }
  return depths.at(-1)!;
}
