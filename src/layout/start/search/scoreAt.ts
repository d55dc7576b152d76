import type { WallScore } from '../../WallScore.ts';
import type { CutProfile } from './cutProfile.ts';
import type { WallDirection, WallReading } from './WallReading.ts';

/** Chalk lines are taken to stand within so much of their place, in ticks: 1/40 in, common practice, no source. */
export const SET_OUT = 200;
/** A strip must be wider than the least, and a half may lack, this much more. */
const MARGIN = 308;

/**
 * What the walls of one direction get where the pattern stands at `phase` along its normal, chalk lines being off by `SET_OUT` the way
 * that is worst for each wall. With a `reach` no start that far to either side is better in any figure.
 */
export function scoreAt(direction: WallDirection, phase: number, reach = 0): WallScore {
  let [strips, halves, narrowest] = [0, 0, 1];
  const { ahead, behind, spacing, readings } = direction;
  // Every start within reach may be off to what lies in between; beyond that one of them may have the best of it.
  const cutIn = reach < SET_OUT ? worstCut : bestCut;
  const off = Math.abs(reach - SET_OUT);
  for (const reading of readings) {
    const profiles = reading.side > 0 ? ahead : behind;
    const lowest = reading.side * phase - off - reading.at;
    let [thin, lacks, least] = [0, 0, 1];
    for (const profile of profiles) {
      const from = lowest + profile.top;
      const first = from - Math.floor((from + 2 * off - Math.min(0, reading.absent)) / spacing) * spacing;
      for (let low = first; low < profile.depth; low += spacing) {
        const cut = cutIn(profile, reading, low, low + 2 * off);
        thin += cut.thin;
        lacks += cut.lacks;
        if (cut.share < least) least = cut.share;
      }
    }
    strips += thin * reading.length;
    halves += lacks * reading.length;
    if (reading.counts && least < narrowest) narrowest = least;
  }
  return { strips, halves, narrowest };
}

const NONE = { thin: 0, lacks: 0, share: 1 };

/** Of a tile that reaches past the wall by between `low` and `high`: the least that can be held against it. */
function bestCut(profile: CutProfile, { absent, kept }: WallReading, low: number, high: number) {
  if (low <= absent || high >= profile.depth - kept) return NONE;
  return cutOf(profile, high, Math.min(shareOfWall(profile, low), shareOfWall(profile, high)));
}

/** The same tile: the most. */
function worstCut(profile: CutProfile, { absent, kept }: WallReading, low: number, high: number) {
  if (high <= absent || low >= profile.depth - kept) return NONE;
  const least = Math.max(low, absent);
  const { depths, shares } = profile.cell;
  let most = Math.max(shareOfWall(profile, least), shareOfWall(profile, high));
  depths.forEach((depth, i) => {
    if (depth > least && depth < high && shares[i]! > most) most = shares[i]!;
  });
  return cutOf(profile, least, most);
}

/** A cut of a depth, along a part of the wall. */
function cutOf(profile: CutProfile, depth: number, part: number) {
  const [x, y] = extentsAt(profile, Math.max(0, depth));
  const { least, sides } = profile;
  const lacks = Math.max(0, 1 - Math.min(ratio(x, least[0]), ratio(y, least[1])));
  return {
    thin: depth - MARGIN < profile.strip ? part : 0,
    lacks: lacks * part,
    share: Math.min(x / sides[0], y / sides[1]),
  };
}

/** What a half may lack in all. */
export const LENIENT = SET_OUT + MARGIN;

function ratio(extent: number, least: number): number {
  return least <= LENIENT ? 1 : extent / (least - LENIENT);
}

function extentsAt({ depths, extents }: CutProfile, depth: number): readonly [number, number] {
  const i = placeIn(depths, depth);
  const part = (depth - depths[i]!) / (depths[i + 1]! - depths[i]!);
  const [[x, y], [u, v]] = [extents[i]!, extents[i + 1]!];
  return [x + part * (u - x), y + part * (v - y)];
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
