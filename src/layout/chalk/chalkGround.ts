import { subtract } from '../../geometry/index.ts';
import type { Job, SurfaceSpec } from '../../job/Job.ts';
import { isFold } from '../../room/isFold.ts';
import type { Room } from '../../room/Room.ts';
import { intoFrame } from '../frame/frameRoom.ts';
import { turnOf } from '../frame/turnOf.ts';
import type { FramedRoom } from '../Layout.ts';
import type { Counting } from './countedFrom.ts';
import type { Faces } from './Faces.ts';
import type { Reading } from './lineError.ts';

/** What a room and a job say about where lines can be snapped, before any pattern is laid. */
export interface ChalkGround extends Omit<Counting, 'pattern'>, Reading {
  readonly frame: FramedRoom;
  readonly corners: Faces['corners'];
  readonly walls: Faces['walls'];
}

/** The ground of a room that was turned into its pattern's frame. */
export function chalkGround(
  { print }: Pick<Job, 'print'>,
  surface: SurfaceSpec,
  room: Room,
  frame: FramedRoom,
): ChalkGround {
  const move = intoFrame(turnOf(room, surface.pattern));
  return {
    frame,
    corners: room.corners.map((corner, i) => ({ name: surface.corners[i]!.name, at: move(corner) })),
    walls: new Map(room.adjustment.readings.map(({ id, used }) => [id, used])),
    wishes: surface.start,
    doorways: room.openings.map(({ name }) => name),
    system: print.system,
    step: print.step,
  };
}

/** What a tape meets in the framed room. */
export function facesOf({ frame, corners, walls }: ChalkGround): Faces {
  const { outline } = frame;
  const obstacles = frame.obstacles.filter((one) => !isFold(one));
  return {
    edges: [...frame.edges, ...obstacles.flatMap((one) => one.edges)],
    corners,
    obstacles,
    walls,
    floor: subtract(
      [{ outer: outline, holes: [] }],
      obstacles.map(({ ring }) => ({ outer: ring, holes: [] })),
    ),
  };
}
