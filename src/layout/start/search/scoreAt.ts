import type { WallScore } from '../../WallScore.ts';
import type { CutProfile } from './cutProfile.ts';
import type { WallDirection, WallReading } from './WallReading.ts';

/**
 * What the walls of one direction get where the pattern stands at `phase` along its normal, chalk lines being off by `setOut` the way
 * that is worst for each wall. With a `reach` no start that far to either side is better in any figure.
 */
export function scoreAt(direction: WallDirection, phase: number, reach = 0): WallScore {
  let [strips, halves, narrowest] = [0, 0, 1];
  const { ahead, behind, spacing, readings, setOut, margin } = direction;
  // Every start within reach may be off to what lies in between; beyond that one of them may have the best of it.
  const add = reach < setOut ? addWorst : addBest;
  const off = Math.abs(reach - setOut);
  const sum: Sum = { thin: 0, lacks: 0, share: 1, margin, lenient: setOut + margin };
  for (const reading of readings) {
    const lowest = reading.side * phase - off - reading.at;
    sum.thin = 0;
    sum.lacks = 0;
    sum.share = 1;
    for (const profile of reading.side > 0 ? ahead : behind) {
      const from = lowest + profile.top;
      const first = from - Math.floor((from + 2 * off - Math.min(0, reading.absent)) / spacing) * spacing;
      for (let low = first; low < profile.depth; low += spacing)
        add(sum, profile, reading, low, low + 2 * off);
    }
    strips += sum.thin * reading.length;
    halves += sum.lacks * reading.length;
    if (reading.counts && sum.share < narrowest) narrowest = sum.share;
  }
  return { strips, halves, narrowest };
}

/** What the cuts along a wall come to: parts of it that are thin, or lack of half a tile, and the narrowest. One is filled again and again: the search asks a million times. */
interface Sum {
  thin: number;
  lacks: number;
  share: number;
  readonly margin: number;
  /** What a half may lack in all. */
  readonly lenient: number;
}

/** Of a tile that reaches past the wall by between `low` and `high`: the least that can be held against it. */
function addBest(
  sum: Sum,
  profile: CutProfile,
  { absent, kept }: WallReading,
  low: number,
  high: number,
): void {
  if (low <= absent || high >= profile.depth - kept) return;
  addCut(sum, profile, high, Math.min(shareOfWall(profile, low), shareOfWall(profile, high)));
}

/** The same tile: the most. */
function addWorst(
  sum: Sum,
  profile: CutProfile,
  { absent, kept }: WallReading,
  low: number,
  high: number,
): void {
  if (high <= absent || low >= profile.depth - kept) return;
  const least = Math.max(low, absent);
  const { depths, shares } = profile.cell;
  let most = Math.max(shareOfWall(profile, least), shareOfWall(profile, high));
  for (let i = 0; i < depths.length; i++) {
    if (depths[i]! > least && depths[i]! < high && shares[i]! > most) most = shares[i]!;
  }
  addCut(sum, profile, least, most);
}

/** Adds a cut of a depth, along a part of the wall. */
function addCut(
  sum: Sum,
  { depths, extents, least, sides, strip }: CutProfile,
  below: number,
  part: number,
): void {
  const depth = Math.max(0, below);
  const i = placeIn(depths, depth);
  const on = (depth - depths[i]!) / (depths[i + 1]! - depths[i]!);
  const [before, after] = [extents[i]!, extents[i + 1]!];
  const x = before[0] + on * (after[0] - before[0]);
  const y = before[1] + on * (after[1] - before[1]);
  if (below - sum.margin < strip) sum.thin += part;
  sum.lacks +=
    part * Math.max(0, 1 - Math.min(ratio(x, least[0], sum.lenient), ratio(y, least[1], sum.lenient)));
  sum.share = Math.min(sum.share, x / sides[0], y / sides[1]);
}

function ratio(extent: number, least: number, lenient: number): number {
  return least <= lenient ? 1 : extent / (least - lenient);
}

function shareOfWall({ cell: { depths, shares } }: CutProfile, depth: number): number {
  const i = placeIn(depths, depth);
  const part = (depth - depths[i]!) / (depths[i + 1]! - depths[i]!);
  return shares[i]! + part * (shares[i + 1]! - shares[i]!);
}

/** The stretch of a rising list in which a value lies; the first or the last where it lies outside. */
function placeIn(list: readonly number[], value: number): number {
  let i = 0;
  while (i < list.length - 2 && value > list[i + 1]!) i++;
  return i;
}
