import type { StartWish } from '../../job/Job.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { ChalkLine } from '../Layout.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import type { Faces } from './Faces.ts';

/** What tiles of an axis are counted by. */
export interface Counting {
  readonly pattern: Pattern;
  readonly wide?: readonly WideJoint[];
  readonly wishes: { readonly along: StartWish; readonly across: StartWish };
  readonly doorways: readonly string[];
}

/**
 * Where a whole tile was wished against a doorway: the tile whose edge lies at the line's joint, counted from
 * there, and how far its edge is from that of the first tile: whole modules, and what wide joints between add.
 */
export function countedFrom(
  { axis, from: { 0: x, 1: y } }: ChalkLine,
  { edges }: Faces,
  { pattern, wide = [], wishes, doorways }: Counting,
): ChalkLine['counted'] {
  const wish = axis && wishes[axis];
  if (wish?.kind !== 'tile' || !doorways.includes(wish.on)) return undefined;
  const edge = edges.find(({ id, name }) => id === `${wish.on}:line` || name === wish.on);
  if (!edge) return undefined;
  const at = axis === 'along' ? 0 : 1;
  const place = (edge.from[at] + edge.to[at]) / 2;
  const line = axis === 'along' ? x : y;
  const [own, from] = [line, place].map((one) => drawnTogether(wide, at, one)) as [number, number];
  const module = pattern.module[at];
  // The line is the middle of a joint: the tile beyond it begins half a joint farther.
  const start = Math.abs(own - from) + pattern.joint / 2 - edge.gap;
  const modules = Math.round(start / module);
  const [low, high] = [Math.min(own, from), Math.max(own, from)];
  const between = wide.filter((one) => one.axis === at && one.at >= low && one.at <= high);
  const more = between.reduce((sum, { extra }) => sum + extra, 0);
  return { from: wish.on, tile: modules + 1, distance: modules * module + more };
}
