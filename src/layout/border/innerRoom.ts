import {
  isSimple,
  type Point,
  type Ring,
  ringArea,
  type Shape,
  subtract,
  unitAlong,
} from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { RoomInFrame } from '../frame/frameRoom.ts';
import type { BorderSide } from './BorderSide.ts';
import { jointFacts } from './courseEnds.ts';
import { inTicks, movedLeft, offsetLine, runOn, whereMeet } from './offsetLine.ts';

/**
 * What is left of a room inside a border of that depth, a room of its own: its sides are the border's inner edges, each in the name of
 * its wall, from which tile keeps a joint. The wall along which there is no room for the border, where there is one.
 */
export function innerRoom(
  sides: readonly BorderSide[],
  depth: Ticks,
  joint: Ticks,
  obstacles: RoomInFrame['obstacles'],
): { readonly room: RoomInFrame } | { readonly wall: string } {
  const corners = cornersAt(sides, depth);
  const along = sides.map((side, i) =>
    edgeOf(side, corners[i]!.at(-1)!, corners[(i + 1) % sides.length]![0]!, joint),
  );
  const turned = along.find((edge, i) => !runsAlong(edge, sides[i]!));
  if (turned) return { wall: turned.name };
  const edges = along.flatMap((edge, i) => {
    const [end, begin] = corners[(i + 1) % sides.length]!;
    return begin ? [edge, edgeOf(sides[i]!, end!, begin, joint)] : [edge];
  });
  const outline: Ring = edges.map(({ from }) => from);
  // Drawn in from the walls at once, so that corners are rounded once.
  const outer: Ring = cornersAt(sides, depth + joint).flat();
  const fits = [outline, outer].every((ring) => isSimple(ring) && ringArea(ring) > 0);
  const cleared = obstacles.map(({ cleared }): Shape => ({ outer: cleared, holes: [] }));
  const field = fits ? subtract([{ outer, holes: [] }], cleared) : [];
  return field.length === 0 ? { wall: shortest(sides) } : { room: { outline, edges, obstacles, field } };
}

/** For each wall where inner edges so deep meet at its begin; two points where the one before runs on in it with another gap. */
function cornersAt(sides: readonly BorderSide[], depth: Ticks): readonly (readonly Point[])[] {
  return sides.map((own, i) => {
    const before = sides.at(i - 1)!;
    const one = offsetLine(before, before.facts.gap + depth);
    const other = offsetLine(own, own.facts.gap + depth);
    const begin = inTicks(whereMeet(one, other));
    if (!runOn(one, other)) return [begin];
    const end = inTicks(movedLeft(before.to, one.along, before.facts.gap + depth));
    return Math.hypot(end[0] - begin[0], end[1] - begin[1]) > STEP ? [end, begin] : [begin];
  });
}

/** Two corners of rounding are one. */
const STEP = 4;

function edgeOf({ wall, facts }: BorderSide, from: Point, to: Point, joint: Ticks): RoomEdge {
  return {
    ...jointFacts(joint),
    seen: facts.seen,
    id: `border:${wall}`,
    name: wall,
    from,
    to,
  };
}

/** Whether an inner edge runs the way of its wall and has a length. */
function runsAlong({ from, to }: RoomEdge, wall: BorderSide): boolean {
  const [ux, uy] = unitAlong(wall.from, wall.to);
  return (to[0] - from[0]) * ux + (to[1] - from[1]) * uy > STEP;
}

function shortest(sides: readonly BorderSide[]): string {
  const length = ({ from, to }: BorderSide) => Math.hypot(to[0] - from[0], to[1] - from[1]);
  return sides.reduce((best, next) => (length(next) < length(best) ? next : best)).wall;
}
