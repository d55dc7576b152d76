import type { WallScore } from '../../WallScore.ts';
import type { CutProfile } from './cutProfile.ts';
import type { WallDirection, WallReading } from './WallReading.ts';

/**
 * What the walls of one direction get where the pattern stands at `phase` along its normal, chalk lines being off by `setOut` the way
 * that is worst for each wall. With a `reach` no start that far to either side is better in any figure. Once a cut is found that is
 * narrower than `floor`, a share of a tile, nothing more is asked: the other figures are then short of what they are.
 */
export function scoreAt(direction: WallDirection, phase: number, reach = 0, floor = 0): WallScore {
  let strips = 0;
  let halves = 0;
  let narrowest = 1;
  const { ahead, behind, readings, setOut } = direction;
  const sum: Sum = { thin: 0, lacks: 0, share: 1 };
  for (const reading of readings) {
    const lowest = reading.side * phase - Math.abs(reach - setOut) - reading.at;
    sum.thin = 0;
    sum.lacks = 0;
    sum.share = 1;
    for (const profile of reading.side > 0 ? ahead : behind)
      addCuts(sum, profile, reading, lowest + profile.top, direction, reach);
    strips += sum.thin * reading.length;
    halves += sum.lacks * reading.length;
    if (reading.counts && sum.share < narrowest) narrowest = sum.share;
    if (narrowest < floor) break;
  }
  return { strips, halves, narrowest };
}

/** What the cuts along a wall come to: parts of it that are thin, or lack of half a tile, and the narrowest. One is filled again and again: the search asks a million times. */
interface Sum {
  thin: number;
  lacks: number;
  share: number;
}

/**
 * Adds the cuts that one tile of the repeat makes at a reading, `from` being how far the lowest of them may reach past the wall. Every
 * start within reach may be off to what lies in between, so that the most is held against it; beyond `setOut` one of them may have
 * the best of it, and the least is.
 */
function addCuts(
  sum: Sum,
  profile: CutProfile,
  { absent, kept }: WallReading,
  from: number,
  { spacing, setOut, margin }: WallDirection,
  reach: number,
): void {
  const wide = 2 * Math.abs(reach - setOut);
  const worst = reach < setOut;
  const { depth, cell } = profile;
  const last = depth - kept;
  const first = from - Math.floor((from + wide - Math.min(0, absent)) / spacing) * spacing;
  for (let low = first; low < depth; low += spacing) {
    const high = low + wide;
    if (worst ? high <= absent || low >= last : low <= absent || high >= last) continue;
    const least = worst && low < absent ? absent : low;
    const part = worst ? mostOfWall(cell, least, high) : leastOfWall(cell, low, high);
    addCut(sum, profile, worst ? least : high, part, margin, setOut + margin);
  }
}

type Cell = CutProfile['cell'];

/** The greatest part of the wall that a tile takes up where it reaches past it by between `low` and `high`. */
function mostOfWall({ depths, shares }: Cell, low: number, high: number): number {
  const first = placeIn(depths, low);
  const last = placeIn(depths, high, first);
  let most = Math.max(shareOfWall(depths, shares, first, low), shareOfWall(depths, shares, last, high));
  for (let i = first; i <= last + 1; i++) {
    if (depths[i]! > low && depths[i]! < high && shares[i]! > most) most = shares[i]!;
  }
  return most;
}

/** The lesser of the parts of the wall that it takes up at either. */
function leastOfWall({ depths, shares }: Cell, low: number, high: number): number {
  const first = placeIn(depths, low);
  const last = placeIn(depths, high, first);
  return Math.min(shareOfWall(depths, shares, first, low), shareOfWall(depths, shares, last, high));
}

/** Adds a cut of a depth, along a part of the wall; a half may lack `lenient` in all. */
function addCut(
  sum: Sum,
  { depths, extents, least, sides, strip }: CutProfile,
  below: number,
  part: number,
  margin: number,
  lenient: number,
): void {
  const depth = Math.max(0, below);
  const i = placeIn(depths, depth);
  const on = (depth - depths[i]!) / (depths[i + 1]! - depths[i]!);
  const before = extents[i]!;
  const after = extents[i + 1]!;
  const x = before[0] + on * (after[0] - before[0]);
  const y = before[1] + on * (after[1] - before[1]);
  if (below - margin < strip) sum.thin += part;
  sum.lacks += part * Math.max(0, 1 - Math.min(ratio(x, least[0], lenient), ratio(y, least[1], lenient)));
  sum.share = Math.min(sum.share, x / sides[0], y / sides[1]);
}

function ratio(extent: number, least: number, lenient: number): number {
  return least <= lenient ? 1 : extent / (least - lenient);
}

function shareOfWall(depths: readonly number[], shares: readonly number[], i: number, depth: number): number {
  const part = (depth - depths[i]!) / (depths[i + 1]! - depths[i]!);
  return shares[i]! + part * (shares[i + 1]! - shares[i]!);
}

/** The stretch of a rising list in which a value lies, which is not before `from`; the first or the last where it lies outside. */
function placeIn(list: readonly number[], value: number, from = 0): number {
  let i = from;
  while (i < list.length - 2 && value > list[i + 1]!) i++;
  return i;
}
