import type { CutProfile } from './cutProfile.ts';
import type { WallDirection } from './WallReading.ts';

/** Beside a change, so much farther than lines may be off, in ticks. */
const FIRM = 2;

/**
 * The phases, in whole ticks from 0 to one spacing, at which something changes at a wall of a direction: a tile begins to reach
 * past it or stays whole, a strip is wide enough, a cut is half a tile. Between two of them everything changes evenly.
 */
export function breakPhases({ ahead, behind, spacing, readings, setOut, margin }: WallDirection): number[] {
  const lenient = setOut + margin;
  const firm = setOut + FIRM;
  const found = new Set<number>();
  for (const { side, at, absent, kept } of readings) {
    for (const profile of side > 0 ? ahead : behind) {
      const sizes = [profile.strip + lenient, halfOf(profile, lenient) + setOut];
      for (const depth of [absent, ...sizes, profile.depth - kept]) {
        const phase = side * (at + depth - profile.top);
        const within = phase - Math.floor(phase / spacing) * spacing;
        found.add(Math.round(within - firm)).add(Math.round(within + firm));
      }
    }
  }
  return [...found].sort((a, b) => a - b);
}

/** The depth at which a cut is no longer less than half a tile. */
function halfOf({ depths, extents, least }: CutProfile, lenient: number): number {
  const place = ([x, y]: readonly [number, number]) =>
    Math.max(0, least[0] - lenient - x, least[1] - lenient - y);
  for (let i = 1; i < depths.length; i++) {
    const [before, after] = [place(extents[i - 1]!), place(extents[i]!)];
    if (after === 0 && before > 0) {
      const [low, high] = [extents[i - 1]!, extents[i]!];
      const parts = ([0, 1] as const).map((axis) =>
        high[axis] === low[axis] ? 0 : (least[axis] - lenient - low[axis]) / (high[axis] - low[axis]),
      );
      return depths[i - 1]! + Math.max(0, ...parts) * (depths[i]! - depths[i - 1]!);
    }
  }
  return depths.at(-1)!;
}
