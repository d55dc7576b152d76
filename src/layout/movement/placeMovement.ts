import { bounds, lineThroughShape, type Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import { type Exposure, exteriorJointWidth } from '../../trade/index.ts';
import type { CarriedJoint } from '../carriedJoints.ts';
import { jointsOn } from '../chalk/jointsOn.ts';
import type { Layout } from '../Layout.ts';
import { longestRuns } from './bayRuns.ts';
import { evenLines } from './evenLines.ts';
import type { Movement, MovementLine } from './Movement.ts';
import { turnedCorners } from './turnedCorners.ts';

type Floor = Pick<Layout, 'turn' | 'frame' | 'field' | 'pattern' | 'origin' | 'chalk'>;

/** What the soft joints of a floor follow from. */
export interface Bays {
  /** Most between two of them, in ticks. */
  readonly limit: Ticks;
  readonly exposure: Exposure;
  readonly carried: readonly CarriedJoint[];
}

/** Rotating a corner rounds it to ticks. */
const ROUNDING = 4;

/**
 * Where a floor that is longer than one bay has its soft joints: on straight joints of its pattern, over each joint of the
 * base that one of them takes up, between those in the fewest bays, beside corners round which the tile turns where that
 * leaves no bay too short, else evenly. Undefined where the floor is one bay.
 */
export function placeMovement(floor: Floor, bays: Bays): Movement | undefined {
  const runs = longestRuns(floor.field, floor.turn);
  if (Math.max(...runs) <= bays.limit) return undefined;
  const axes = ([0, 1] as const).map((axis) => onAxis(floor, bays, axis));
  return {
    limit: bays.limit,
    lines: axes.flatMap(({ lines }) => lines),
    missing: axes.flatMap(({ missing }) => missing),
  };
}

function onAxis(floor: Floor, bays: Bays, axis: 0 | 1): Omit<Movement, 'limit'> {
  const name = axis === 0 ? 'along' : 'across';
  const limit = limitInFrame(bays.limit, floor.turn);
  const [low, high] = extentOn(floor, axis);
  const straight = axis === 0 ? floor.pattern.straightX : floor.pattern.straightY;
  const joints = straight
    ? jointsOn(axis, floor.frame, floor.pattern, floor.origin).filter((at) => at > low && at < high)
    : [];
  const fixed = fixedOn(floor, bays, axis, joints);
  const wanted = wantedOn(floor, axis, joints);
  const ends = [low, ...fixed, high];
  const between = ends.slice(1).map((to, i) => {
    const inside = joints.filter((at) => at > ends[i]! && at < to);
    return evenLines({ from: ends[i]!, to, joints: inside, limit, wanted });
  });
  const missing = between.some((lines) => lines === undefined)
    ? [{ axis, bays: Math.ceil((high - low) / limit) }]
    : [];
  const places = [...fixed, ...between.flatMap((lines) => lines ?? [])].sort((a, b) => a - b);
  const all = [low, ...places, high];
  const longest = Math.max(...all.slice(1).map((at, i) => at - all[i]!));
  const width = bays.exposure === 'outside' ? exteriorJointWidth(longest) : floor.pattern.joint;
  const why = (at: Ticks) => (fixed.includes(at) ? 'baseJoint' : wanted.has(at) ? 'corner' : 'even');
  const lines = places.map((at): MovementLine => ({ ...lineAt(floor, axis, at), why: why(at), width }));
  return {
    lines: lines.filter(({ parts }) => parts.length > 0),
    missing: missing.map((one) => ({ ...one, axis: name })),
  };
}

/** A bay that lies aslant reaches farther along the walls than along its own sides. */
function limitInFrame(limit: Ticks, turn: number): Ticks {
  const reach = Math.abs(Math.cos(turn)) + Math.abs(Math.sin(turn));
  return reach - 1 < 1e-9 ? limit : Math.floor(limit / reach) - ROUNDING;
}

function extentOn({ field }: Floor, axis: 0 | 1): readonly [Ticks, Ticks] {
  const { minX, maxX, minY, maxY } = bounds(field.map(({ outer }) => outer));
  return axis === 0 ? [minX, maxX] : [minY, maxY];
}

/** Joints of the tile that take up one of the base. */
function fixedOn(floor: Floor, { carried }: Bays, axis: 0 | 1, joints: readonly Ticks[]): readonly Ticks[] {
  const name = axis === 0 ? 'along' : 'across';
  const taken = carried
    .filter((one) => one.axis === name)
    .map((one) => floor.chalk.crossing[axis] + (one.distance ?? 0));
  return joints.filter((at) => taken.includes(at));
}

/** The joint nearest to each corner round which the tile turns. */
function wantedOn(floor: Floor, axis: 0 | 1, joints: readonly Ticks[]): ReadonlySet<Ticks> {
  const reach = floor.pattern.module[axis] / 2;
  return new Set(
    turnedCorners(floor).flatMap((corner) => {
      const off = (at: Ticks) => Math.abs(at - corner[axis]);
      const near = joints.reduce<Ticks | undefined>(
        (best, at) => (best === undefined || off(at) < off(best) ? at : best),
        undefined,
      );
      return near !== undefined && off(near) <= reach ? [near] : [];
    }),
  );
}

function lineAt(
  floor: Floor,
  axis: 0 | 1,
  at: Ticks,
): Pick<MovementLine, 'axis' | 'at' | 'steps' | 'distance' | 'parts' | 'length'> {
  const point = (t: number): Point => (axis === 0 ? [at, Math.round(t)] : [Math.round(t), at]);
  const spans = floor.field
    .flatMap((shape) => lineThroughShape(shape, point(0), axis === 0 ? [0, 1] : [1, 0]))
    .sort((a, b) => a.from - b.from);
  const distance = at - floor.chalk.crossing[axis];
  return {
    axis: axis === 0 ? 'along' : 'across',
    at,
    steps: Math.round(distance / floor.pattern.module[axis]),
    distance,
    parts: spans.map(({ from, to }) => ({ from: point(from), to: point(to) })),
    length: spans.reduce((sum, { from, to }) => sum + Math.round(to) - Math.round(from), 0),
  };
}
