import { shapeArea, subtract } from '../../geometry/index.ts';
import type { InlaySpec, SurfaceSpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import { makeObstacle } from '../../room/makeObstacle.ts';
import type { Obstacle, Room } from '../../room/Room.ts';
import { wallLines } from '../../room/wallLine.ts';
import { jointFacts } from '../border/courseEnds.ts';
import { intoFrame, moveObstacle, type RoomInFrame } from '../frame/frameRoom.ts';
import { turnOf } from '../frame/turnOf.ts';

/** An inlay as the field sees it, in the field's frame: a place that it keeps a joint from. Null where both walls run parallel. */
export function placeInlay(spec: InlaySpec, surface: SurfaceSpec, room: Room, joint: Ticks): Obstacle | null {
  const { name, along, out, from } = spec;
  const shape = { kind: 'rectangle', along, out, from } as const;
  const made = makeObstacle({ ...jointFacts(joint), name, shape }, wallLines(surface, room.corners));
  if (!made) return null;
  const turned = turnOf(room, surface.pattern);
  return moveObstacle(made, intoFrame(turned), (turned.turn / (Math.PI / 2)) % 1 === 0);
}

/** What an inlay may lap over the field by, in square ticks: rounding. */
const LAP = 1000;

/** A room with an inlay taken out of its field; null where the inlay, with the joint round it, does not lie in that field. */
export function withoutInlay(room: RoomInFrame, inlay: Obstacle): RoomInFrame | null {
  const cleared = [{ outer: inlay.cleared, holes: [] }];
  const outside = subtract(cleared, room.field).reduce((sum, shape) => sum + shapeArea(shape), 0);
  if (outside > LAP) return null;
  return { ...room, obstacles: [...room.obstacles, inlay], field: subtract(room.field, cleared) };
}
