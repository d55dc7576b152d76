import { bounds, lineThroughShape, type Point } from '../../geometry/index.ts';
import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../../measure/index.ts';
import { type Exposure, exteriorJointWidth } from '../../trade/index.ts';
import type { CarriedJoint } from '../carriedJoints.ts';
import { jointsOn } from '../chalk/jointsOn.ts';
import type { Layout } from '../Layout.ts';
import { alongCourses } from './alongCourses.ts';
import { longestRuns } from './bayRuns.ts';
import { drawnTogether } from './drawnTogether.ts';
import { evenLines } from './evenLines.ts';
import type { Movement, MovementLine } from './Movement.ts';
import { pulledApart } from './pulledApart.ts';
import { sameWide } from './sameWide.ts';
import { turnedCorners } from './turnedCorners.ts';
import { wideJointsOf } from './wideJointsOf.ts';

type Floor = Pick<
  Layout,
  'turn' | 'frame' | 'field' | 'pattern' | 'origin' | 'wide' | 'chalk' | 'border' | 'inlays'
>;

/** What the soft joints of a floor follow from. */
export interface Bays {
  /** Most between two of them, in ticks. */
  readonly limit: Ticks;
  readonly exposure: Exposure;
  readonly carried: readonly CarriedJoint[];
  readonly system: System;
}

/** A width is rounded up to what strips and spacers come in: 1/16 in or 1 mm; common practice, no source. */
const WIDTH_STEP: Readonly<Record<System, Ticks>> = { inches: TICKS_PER_INCH / 16, mm: TICKS_PER_MM };

/** Rotating a corner rounds it to ticks. */
const ROUNDING = 4;

/**
 * Where a floor that is longer than one bay has its soft joints: on straight joints of its pattern, over each joint of the
 * base that one of them takes up, between those in the fewest bays, beside corners round which the tile turns where that
 * leaves no bay too short, else evenly. Undefined where the floor is one bay. Bays are measured in the pattern as it repeats, so
 * that what a wide joint has more than others is no part of them; one that is laid wide is not given up again.
 */
export function placeMovement(floor: Floor, bays: Bays): Movement | undefined {
  const runs = longestRuns(floor.field, floor.turn);
  if (Math.max(...runs) <= bays.limit) return undefined;
  const axes = ([0, 1] as const).map((axis) => onAxis(floor, bays, axis));
  const lines = axes.flatMap((axis) => axis.lines);
  return {
    limit: bays.limit,
    lines,
    missing: axes.flatMap(({ missing }) => missing),
    laid: sameWide(wideJointsOf(lines, floor.pattern.joint), floor.wide ?? []),
  };
}

function onAxis(floor: Floor, bays: Bays, axis: 0 | 1): Pick<Movement, 'lines' | 'missing'> {
  const name = axis === 0 ? 'along' : 'across';
  const limit = limitInFrame(bays.limit, floor.turn);
  const [low, high] = extentOn(floor, axis);
  const straight = axis === 0 ? floor.pattern.straightX : floor.pattern.straightY;
  const joints = straight
    ? jointsOn(axis, floor.frame, floor.pattern, floor.origin).filter((at) => at > low && at < high)
    : [];
  const fixed = fixedOn(floor, bays.carried, axis, joints);
  const over = fixedOn(
    floor,
    bays.carried.filter(({ kind }) => kind === 'over'),
    axis,
    joints,
  );
  const [clear, good] = clearOf(floor, axis, joints);
  const wanted = wantedOn(floor, axis, good);
  const ends = [low, ...fixed, high];
  const between = ends.slice(1).map((to, i) => {
    const from = ends[i]!;
    const isInside = (at: Ticks) => at > from && at < to;
    const wide = (floor.wide ?? []).filter((one) => one.axis === axis && isInside(one.at));
    const linesOn = (places: readonly Ticks[]) =>
      evenLines({ from, to, joints: places.filter(isInside), limit, wanted, least: wide.length + 1 });
    const best = linesOn(good) ?? linesOn(joints);
    const round = clear.length < good.length ? linesOn(clear) : undefined;
    return round && round.length === best?.length ? round : best;
  });
  const missing = between.some((lines) => lines === undefined)
    ? [{ axis: name, bays: Math.ceil((high - low) / limit) } as const]
    : [];
  const places = [...fixed, ...between.flatMap((lines) => lines ?? [])].sort((a, b) => a - b);
  const all = [low, ...places, high];
  const width = widthFor(Math.max(...all.slice(1).map((at, i) => at - all[i]!)), floor, bays);
  const why = (at: Ticks) => {
    if (over.includes(at)) return 'baseJoint';
    if (fixed.includes(at)) return 'nearBaseJoint';
    return wanted.has(at) ? 'corner' : 'even';
  };
  const lines = places.map((at): MovementLine => ({ ...lineAt(floor, axis, at), why: why(at), width }));
  return { lines: lines.filter(({ parts }) => parts.length > 0), missing };
}

/** Of joints those that run neither along a course of the border nor through an inlay; then all that do not run along a course. */
function clearOf(
  floor: Floor,
  axis: 0 | 1,
  joints: readonly Ticks[],
): readonly [readonly Ticks[], readonly Ticks[]] {
  const off = (spans: readonly (readonly [Ticks, Ticks])[]) => (at: Ticks) => {
    const place = pulledApart(floor.wide ?? [], axis, at);
    return spans.every(([from, to]) => place < from || place > to);
  };
  const good = joints.filter(off(alongCourses(floor, axis)));
  const inlays = (floor.inlays ?? []).map(({ ring }) => {
    const places = ring.map((point) => point[axis]);
    return [Math.min(...places), Math.max(...places)] as const;
  });
  return [good.filter(off(inlays)), good];
}

/** As wide as the grout joint; outside as the longest bay asks, where that is more. */
function widthFor(longest: Ticks, { pattern }: Floor, { exposure, system }: Bays): Ticks {
  if (exposure !== 'outside') return pattern.joint;
  const step = WIDTH_STEP[system];
  return Math.max(pattern.joint, Math.ceil(exteriorJointWidth(longest) / step) * step);
}

/** A bay that lies aslant reaches farther along the walls than along its own sides. */
function limitInFrame(limit: Ticks, turn: number): Ticks {
  const reach = Math.abs(Math.cos(turn)) + Math.abs(Math.sin(turn));
  return reach - 1 < 1e-9 ? limit : Math.floor(limit / reach) - ROUNDING;
}

/** From where to where the field reaches, in the pattern as it repeats. */
function extentOn({ field, wide = [] }: Floor, axis: 0 | 1): readonly [Ticks, Ticks] {
  const { minX, maxX, minY, maxY } = bounds(field.map(({ outer }) => outer));
  const [low, high] = axis === 0 ? [minX, maxX] : [minY, maxY];
  return [drawnTogether(wide, axis, low), drawnTogether(wide, axis, high)];
}

/** Joints of the tile that take up one of the base, or lie nearest to one. */
function fixedOn(
  floor: Floor,
  carried: readonly CarriedJoint[],
  axis: 0 | 1,
  joints: readonly Ticks[],
): readonly Ticks[] {
  const name = axis === 0 ? 'along' : 'across';
  const taken = carried
    .filter((one) => one.axis === name)
    .map((one) => drawnTogether(floor.wide ?? [], axis, floor.chalk.crossing[axis] + (one.distance ?? 0)));
  return joints.filter((at) => taken.includes(at));
}

/** The joint nearest to each corner round which the tile turns. */
function wantedOn(floor: Floor, axis: 0 | 1, joints: readonly Ticks[]): ReadonlySet<Ticks> {
  const reach = floor.pattern.module[axis] / 2;
  return new Set(
    turnedCorners(floor).flatMap((corner) => {
      const off = (at: Ticks) => Math.abs(pulledApart(floor.wide ?? [], axis, at) - corner[axis]);
      const near = joints.reduce<Ticks | undefined>(
        (best, at) => (best === undefined || off(at) < off(best) ? at : best),
        undefined,
      );
      return near !== undefined && off(near) <= reach ? [near] : [];
    }),
  );
}

/** A line on a joint that has its place in the pattern as it repeats. */
function lineAt(floor: Floor, axis: 0 | 1, joint: Ticks): Omit<MovementLine, 'why' | 'width'> {
  const { wide = [], chalk, pattern } = floor;
  const at = pulledApart(wide, axis, joint);
  const point = (t: number): Point => (axis === 0 ? [at, Math.round(t)] : [Math.round(t), at]);
  const spans = floor.field
    .flatMap((shape) => lineThroughShape(shape, point(0), axis === 0 ? [0, 1] : [1, 0]))
    .sort((a, b) => a.from - b.from);
  const crossing = chalk.crossing[axis];
  return {
    axis: axis === 0 ? 'along' : 'across',
    at,
    steps: Math.round((joint - drawnTogether(wide, axis, crossing)) / pattern.module[axis]),
    distance: at - crossing,
    parts: spans.map(({ from, to }) => ({ from: point(from), to: point(to) })),
    length: spans.reduce((sum, { from, to }) => sum + Math.round(to) - Math.round(from), 0),
  };
}
