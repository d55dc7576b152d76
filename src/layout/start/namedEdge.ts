import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { aheadOfFace, type Face } from '../frame/Face.ts';
import type { Ground } from '../frame/Ground.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import { pulledApart } from '../movement/pulledApart.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import { findRuns, MOST_LEAN } from './findRuns.ts';
import { sortNearly } from './sortNearly.ts';

/** Lengths no farther apart are equal: rounding of a turned room makes them differ by a tick or two. */
const SAME: Ticks = 4;

/** A face that a job names, seen along one axis. */
export interface NamedEdge {
  readonly index: number;
  /** Whether the floor lies above it on the axis, or below; `none` for a face that is not square to the axis. */
  readonly side: 'low' | 'high' | 'none';
  /** Where the face itself is, half way along it. */
  readonly line: Ticks;
  /** Where the field ends at it: half way along, and where it stands farthest into the field. */
  readonly field: Ticks;
  readonly innermost: Ticks;
  /** Of a straight face aslant to the axis: where the field ends on the line along the axis through the middle of the face, and which way it lies from there. */
  readonly aslant?: { readonly field: Ticks; readonly way: 1 | -1 };
}

/**
 * The face a job means by a name on an axis (0 for x, 1 for y): a wall from corner to corner, of a doorway its
 * closed-door line, of an obstacle the side along which most field lies square to the axis, and of two such sides the one before the longer run. A face that runs
 * along the axis instead, and a circle, stand for their middle.
 */
export function namedEdge(ground: Ground, name: string, axis: 0 | 1): NamedEdge | undefined {
  const own = ground.faces.flatMap((face, index) => (matches(face, name) ? [index] : []));
  const line = own.filter((index) => ground.faces[index]!.id === `${name}:line`);
  const among = line.length > 0 ? line : own;
  if (among.length === 0) return undefined;
  const fields = among.map((index) => fieldAlong(ground, index, axis));
  const most = Math.max(...fields);
  const best = facingMost(
    ground,
    among.filter((_, i) => fields[i]! >= most - SAME),
    axis,
  );
  const face = ground.faces[best]!;
  // Doorways split a wall; its middle is that of the whole.
  const isWall = among.every((index) => /^[^:]+(\.\d+)?$/.test(ground.faces[index]!.id)) && !face.circle;
  const { to } = ground.faces[among.at(-1)!]!;
  const bends = (isWall ? among : [best]).flatMap((index) => ground.faces[index]!.curve?.points ?? []);
  const whole = isWall ? { ...face, from: ground.faces[among[0]!]!.from, to } : face;
  return { index: best, ...seenAlong(whole, axis, bends, ground.wide ?? []) };
}

function matches({ id, name }: Face, wanted: string): boolean {
  return name === wanted || id === wanted;
}

/** Of faces along which there is as much field, such as two sides of an island, the one that looks across the longest run. */
function facingMost({ edges, faces }: Ground, among: readonly number[], axis: 0 | 1): number {
  if (among.length === 1) return among[0]!;
  const runs = findRuns(edges, faces, axis);
  const across = (index: number) =>
    Math.max(
      0,
      ...runs
        .filter((run) => run.lowFace === index || run.highFace === index)
        .map((run) => run.high - run.low),
    );
  return sortNearly(among, across, SAME, (a, b) => a - b)[0]!;
}

/** Length of field along a face, as seen on the axis square to it. */
function fieldAlong({ edges }: Ground, index: number, axis: 0 | 1): number {
  const other = axis === 0 ? 1 : 0;
  return edges
    .filter(({ face }) => face === index)
    .reduce((sum, { from, to }) => sum + Math.abs(to[other] - from[other]), 0);
}

function seenAlong(
  face: Face,
  axis: 0 | 1,
  bends: readonly Point[],
  wide: readonly WideJoint[],
): Omit<NamedEdge, 'index'> {
  const [a, b] = [face.from[axis], face.to[axis]];
  const line = middleOf(a, b, axis, wide);
  const across = Math.abs(face.to[1 - axis]! - face.from[1 - axis]!);
  if (face.circle || Math.abs(b - a) > MOST_LEAN * across)
    return { side: 'none', line, field: line, innermost: line, ...aslantAt(face, line, axis) };
  const beyond: [number, number] = axis === 0 ? [line + 1e6, face.from[1]] : [face.from[0], line + 1e6];
  const reached = [a, b, ...bends.map((point) => point[axis])];
  return aheadOfFace(face, beyond) > 0
    ? { side: 'low', line, field: line + face.gap, innermost: Math.max(...reached) + face.gap }
    : { side: 'high', line, field: line - face.gap, innermost: Math.min(...reached) - face.gap };
}

/** A face that turns less than this share of itself to the axis runs along it: no line along the axis meets it squarely enough to be measured. */
const LEAST_TURNED = 0.25;

function aslantAt(
  { from, to, gap, circle, curve }: Face,
  line: Ticks,
  axis: 0 | 1,
): Pick<NamedEdge, 'aslant'> {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const inward = axis === 0 ? (from[1] - to[1]) / length : (to[0] - from[0]) / length;
  if (circle || curve || Math.abs(inward) < LEAST_TURNED) return {};
  return { aslant: { field: Math.round(line + gap / inward), way: inward > 0 ? 1 : -1 } };
}

/** The middle as the room has it: that of a ground drawn together is another where more lies on one side of it. */
function middleOf(a: Ticks, b: Ticks, axis: 0 | 1, wide: readonly WideJoint[]): Ticks {
  const [from, to] = [a, b].map((end) => pulledApart(wide, axis, end)) as [Ticks, Ticks];
  return drawnTogether(wide, axis, Math.round((from + to) / 2));
}
