import type { InlaySpec, SurfaceSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Room } from '../room/Room.ts';
import { innerRoom } from './border/innerRoom.ts';
import { wallsOf } from './border/makeBorder.ts';
import { frameRoom, type RoomInFrame } from './frame/frameRoom.ts';
import { type Ground, makeGround } from './frame/Ground.ts';
import { turnOf } from './frame/turnOf.ts';
import { placeInlay, withoutInlay } from './inlay/placeInlay.ts';
import type { Layout } from './Layout.ts';

/** What the pattern of a layout lies on, made anew: the room, or what its border leaves of it; `step` is the saw's. */
export function groundOf(
  { border, pattern }: Pick<Layout, 'border' | 'pattern'>,
  surface: SurfaceSpec,
  room: Room,
  step: Ticks,
): Ground {
  const names = room.openings.map(({ name }) => name);
  const frame = frameRoom(room, turnOf(room, surface.pattern));
  const bordered = border ? within(frame) : frame;
  return makeGround((surface.inlays ?? []).reduce(less, bordered), names, surface, step);

  function less(rest: RoomInFrame, spec: InlaySpec): RoomInFrame {
    const place = placeInlay(spec, surface, room, pattern.joint);
    return (place && withoutInlay(rest, place)) ?? rest;
  }

  function within({ obstacles }: RoomInFrame): RoomInFrame {
    const made = innerRoom(wallsOf({ surface, room }), border!.depth, pattern.joint, obstacles);
    return 'room' in made ? made.room : frame;
  }
}
