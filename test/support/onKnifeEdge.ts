import type { Point, Shape } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { hasWebFault, isNearFull, isUnderHalf } from '../../src/layout/faults/limits.ts';
import { frameRoom } from '../../src/layout/frame/frameRoom.ts';
import { type Ground, makeGround } from '../../src/layout/frame/Ground.ts';
import { turnOf } from '../../src/layout/frame/turnOf.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { countTiles } from '../../src/layout/pieces/insideTiles.ts';
import { layTiles } from '../../src/layout/pieces/layTiles.ts';
import type { Choice } from '../../src/layout/start/Choice.ts';
import { candidateSet } from '../../src/layout/start/candidateSet.ts';
import { evaluate } from '../../src/layout/start/evaluate.ts';
import { axisRuns } from '../../src/layout/start/mainRuns.ts';
import { nearStarts } from '../../src/layout/start/nearStarts.ts';
import { rank } from '../../src/layout/start/rank.ts';
import type { Room } from '../../src/room/Room.ts';
import { areaOf, lengthRound } from './Judged.ts';

/** What must not change when a room is only looked at differently. */
export const TALLIED = ['pieces', 'whole', 'left', 'hardCuts', 'underHalf', 'nearFull', 'webFaults'] as const;
export type Tally = Readonly<Record<(typeof TALLIED)[number], number>>;

/** What is left is counted from this width in ticks up: rounding of the room's corners makes and unmakes specks. */
const SPECK = 8;

/** A part that is left out and is more than a speck. */
export const isLeft = (shape: Shape) => (2 * areaOf(shape)) / lengthRound(shape.outer) > SPECK;

/** A corner that touches the field's edge may lose a tick or not. */
export const isWhole = (shape: Shape, tile: Shape['outer']) =>
  areaOf(shape) > 0.9999 * areaOf({ outer: tile, holes: [] });

/** Rounding of a turned room moves its corners by a tick each way, seen from the pattern by two. */
const NUDGES: readonly Point[] = [-3, 0, 3].flatMap((x) => [-3, 0, 3].map((y): Point => [x, y]));

/** A room made ready as its layout has it. */
function groundOf(room: Room, surface: SurfaceSpec): Ground {
  const names = room.openings.map(({ name }) => name);
  return makeGround(frameRoom(room, turnOf(room, surface.pattern)), names, surface);
}

const nudgesOf = ([x, y]: Point) => NUDGES.map(([dx, dy]): Point => [x + dx, y + dy]);

/** The tallies of a pattern that is moved by three ticks either way on each axis, the room left as it is. */
export function nudged(
  room: Room,
  surface: SurfaceSpec,
  { pattern, origin }: Pick<Layout, 'pattern' | 'origin'>,
): readonly Tally[] {
  const ground = groundOf(room, surface);
  return nudgesOf(origin).map((at): Tally => {
    const { inside, border, left } = layTiles(ground, pattern, at);
    const cut = border.filter(({ whole }) => !whole);
    const inSight = cut.filter(({ seen }) => seen !== 'hidden');
    return {
      pieces: countTiles(inside) + border.length,
      whole: countTiles(inside) + border.filter(({ shape, ring }) => isWhole(shape, ring)).length,
      left: left.filter(({ shape }) => isLeft(shape)).length,
      hardCuts: cut.filter(({ hard }) => hard).length,
      underHalf: inSight.filter((piece) => isUnderHalf(piece, ground, pattern.joint)).length,
      nearFull: cut.filter((piece) => isNearFull(piece, ground)).length,
      webFaults: cut.filter((piece) => hasWebFault(piece, ground)).length,
    };
  });
}

/** Starts that are asked whether a nudge puts them first: those nearest to balance, which go before others that are as good. */
const MOST_NEAR = 24;

/**
 * The tallies of each start that a nudge by three ticks puts before the chosen one: where rounding decides whether one of them
 * leaves out a strip or cuts it, or whether its share is as good or just worse.
 */
export function sameRank(room: Room, surface: SurfaceSpec, layout: Layout): readonly (readonly Tally[])[] {
  const { pattern, start } = layout;
  const ground = groundOf(room, surface);
  const { along, across } = axisRuns(ground);
  const runs = { along: along[0]!, across: across[0]! };
  const set = candidateSet({ ground, pattern, surface }, runs);
  if ('unknown' in set) return [];
  const nearby = (choice: Choice) =>
    nudgesOf(choice.origin).map((origin) => evaluate(ground, pattern, { ...choice, origin }, runs));
  const chosen = nearby({ ...start.chosen, along: start.along, across: start.across });
  const nearest = [...nearStarts({ ground, pattern, surface }, set).near].sort((a, b) => a.shift - b.shift);
  const before = nearest
    .slice(0, MOST_NEAR)
    .filter((choice) => nearby(choice).some((one) => chosen.some((other) => rank([other, one])[0] === one)));
  return before.map(({ origin }) => nudged(room, surface, { pattern, origin }));
}

/** Whether any tally of a layout hangs on a tick or two: a corner of the room lies on a tile's edge, or a cut on a limit. */
export function onKnifeEdge(room: Room, surface: SurfaceSpec, layout: Layout): boolean {
  const tallies = nudged(room, surface, layout);
  return TALLIED.some((of) => new Set(tallies.map((tally) => tally[of])).size > 1);
}
