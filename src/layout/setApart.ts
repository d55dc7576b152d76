import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Pattern } from '../pattern/Pattern.ts';
import type { Border } from './border/Border.ts';
import { borderOf } from './border/borderOf.ts';
import type { BorderLaid } from './border/borderPieces.ts';
import { type BorderGround, refused } from './border/makeBorder.ts';
import type { RoomInFrame } from './frame/frameRoom.ts';
import type { Inlay } from './inlay/Inlay.ts';
import { layInlay } from './inlay/layInlay.ts';
import { placeInlay, withoutInlay } from './inlay/placeInlay.ts';

/** What of a floor lies apart from its pattern, and the room that is left for that. */
export interface Apart extends BorderLaid {
  readonly border?: Border;
  readonly inlays: readonly Inlay[];
  readonly room: RoomInFrame;
}

/** Letters of the inlays' pieces; none of them is one of a quarter, or of the tiles on the tile sheet. */
const LETTERS = ['R', 'S', 'U', 'V', 'W', 'X', 'Y', 'Z'];

/** Lays the border and the inlays of a floor; what finds no place is a problem. */
export function setApart(
  ground: BorderGround,
  pattern: Pattern,
): Apart | { readonly problems: readonly Problem[] } {
  const bordered = borderOf(ground, pattern);
  if (bordered && 'problems' in bordered) return bordered;
  const nothing: BorderLaid = { pieces: [], left: [], faults: [], kept: [] };
  const { surface, room, job } = ground;
  let apart: Apart = {
    ...(bordered ? { ...bordered.laid, border: bordered.border } : nothing),
    inlays: [],
    room: bordered?.inner ?? ground.frame,
  };
  for (const [i, spec] of (surface.inlays ?? []).entries()) {
    const place = placeInlay(spec, surface, room, job.joint);
    const rest = place && withoutInlay(apart.room, place);
    const laid = rest && layInlay(ground, spec, place, LETTERS[i % LETTERS.length]!);
    if (!laid) return inlayRefused(surface, spec.name);
    const tiles = [...new Set(laid.pieces.map(({ tile }) => tile))];
    const { chalk } = laid;
    const inlay = {
      ...{ name: spec.name, ring: place.ring, pattern: spec.pattern.name, tiles },
      ...(chalk && { chalk }),
    };
    apart = {
      ...apart,
      pieces: [...apart.pieces, ...laid.pieces],
      left: [...apart.left, ...laid.left],
      faults: [...apart.faults, ...laid.faults],
      kept: [...apart.kept, ...laid.kept],
      inlays: [...apart.inlays, inlay],
      room: rest,
    };
  }
  return apart;
}

function inlayRefused(surface: SurfaceSpec, name: string): { readonly problems: readonly Problem[] } {
  const { problems } = refused(surface, 'inlayOutside', { name });
  return { problems: problems.map((one) => ({ ...one, path: [surface.name, 'inlays', name] })) };
}
