import type { SurfaceSpec } from '../job/Job.ts';
import type { Room } from '../room/Room.ts';
import { frameRoom } from './frame/frameRoom.ts';
import { makeGround } from './frame/Ground.ts';
import { turnOf } from './frame/turnOf.ts';
import type { Candidate, Layout } from './Layout.ts';
import { namePieces, pieceOf } from './names/namePieces.ts';
import { placesIn } from './pieces/insideTiles.ts';
import { ringAt } from './pieces/Lattice.ts';
import { layTiles } from './pieces/layTiles.ts';
import { wholeTile } from './pieces/wholeTile.ts';

/**
 * The pieces of a layout that begins somewhere else, with the same tile and joint, named from a crossing that moves with
 * it. Everything else of the layout given stays as it is: chalk lines, faults and what is left are those of the chosen start.
 */
export function layAnother(
  layout: Layout,
  surface: SurfaceSpec,
  room: Room,
  step: number,
  { origin }: Candidate,
): Layout {
  const names = room.openings.map(({ name }) => name);
  const frame = frameRoom(room, turnOf(room, surface.pattern));
  const ground = makeGround(frame, names, surface, step);
  const laid = layTiles(ground, layout.pattern, origin);
  const all = [
    ...placesIn(laid.inside).map((place) => wholeTile(place, ringAt(laid.lattice, place))),
    ...laid.border,
  ];
  const { crossing } = layout.chalk;
  const moved = [
    crossing[0] + origin[0] - layout.origin[0],
    crossing[1] + origin[1] - layout.origin[1],
  ] as const;
  const pieces = namePieces(all, laid.lattice, moved).map((one) => pieceOf(one, laid.lattice, ground.faces));
  return { ...layout, origin, pieces };
}
