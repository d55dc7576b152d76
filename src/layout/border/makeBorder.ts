import type { Job, SurfaceSpec } from '../../job/Job.ts';
import type { Problem } from '../../job/Problem.ts';
import { printLength } from '../../measure/index.ts';
import type { Room } from '../../room/Room.ts';
import { intoFrame, type RoomInFrame } from '../frame/frameRoom.ts';
import { makeGround } from '../frame/Ground.ts';
import { turnOf } from '../frame/turnOf.ts';
import type { SoftLine } from '../movement/SoftLine.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import type { Border } from './Border.ts';
import { type BorderSide, borderSides } from './BorderSide.ts';
import { type BorderLaid, borderPieces, type NamedStrip } from './borderPieces.ts';
import { doorwayRegion } from './doorwayRegion.ts';
import { layCourses, tileOf } from './layCourses.ts';
import { layParted } from './layParted.ts';
import { doorwayLine } from './sideLine.ts';

/** What a border is laid on: a surface's room in the pattern's frame. */
export interface BorderGround {
  readonly job: Pick<Job, 'tiles' | 'joint' | 'print'>;
  readonly surface: SurfaceSpec;
  readonly room: Room;
  readonly frame: RoomInFrame;
  /** Soft joints that part what lies apart from the field. */
  readonly soft?: readonly SoftLine[];
  /** Those of the field that are wider than its joint. */
  readonly wide?: readonly WideJoint[];
}

/** A border with its pieces, and the room that is left inside it. */
export interface MadeBorder {
  readonly border: Border;
  readonly laid: BorderLaid;
  readonly inner: RoomInFrame;
}

/** The walls that a border follows, in the pattern's frame. */
export function wallsOf({ surface, room }: Pick<BorderGround, 'surface' | 'room'>): readonly BorderSide[] {
  const move = intoFrame(turnOf(room, surface.pattern));
  return borderSides(surface, room.corners.map(move));
}

/** Lays the courses of a border along every wall; a problem where a wall is curved, or a part of the room too narrow. */
export function makeBorder(
  ground: BorderGround,
  courses: Border['courses'],
): MadeBorder | { readonly problems: readonly Problem[] } {
  const { job, surface, frame } = ground;
  const curved = frame.edges.find(({ arc }) => arc);
  if (curved) return refused(surface, 'borderCurved', { wall: curved.name });
  const sides = wallsOf(ground);
  const made = layCourses(ground, sides, courses, ({ wall }) => wall.replace('-', ''));
  const { depth } = made;
  if ('wall' in made)
    return refused(surface, 'borderTooWide', {
      width: printLength(depth, job.print.system),
      wall: made.wall,
    });
  const behind = sides.flatMap((side) => doorwaysOf(ground, side, courses[0]!.tile));
  const lines = sides.map(({ wall, facts }, i) => {
    const { from, to } = made.inner.edges.find(({ name }) => name === sides[i]!.wall)!;
    return { edge: wall, off: facts.gap + depth, from, to };
  });
  return {
    border: { courses, depth, lines },
    laid: borderPieces([...made.strips, ...behind], job.joint),
    inner: made.inner,
  };
}

/** The floor of the doorways behind the border, in the tile of its outer course. */
function doorwaysOf(
  { job, surface, frame, soft = [] }: BorderGround,
  side: BorderSide,
  key: string,
): NamedStrip[] {
  const tile = tileOf(job.tiles, key);
  const strips: NamedStrip[] = [];
  let first = 1;
  for (const doorway of side.doorways) {
    const region = doorwayRegion(frame, side, doorway, job.joint);
    if (!region) continue;
    const ground = makeGround(region, side.doorways, surface, job.print.step);
    const laid = layParted(ground, doorwayLine(side, region, tile, job.joint), tile, job.joint, soft);
    const prefix = `${side.wall.replace('-', '')}-d`;
    strips.push({ ...laid, tile: key, of: { wall: side.wall, course: 0 }, prefix, first });
    first += laid.pieces.length;
  }
  return strips;
}

/** A problem of the job's border. */
export function refused(
  { name }: Pick<SurfaceSpec, 'name'>,
  code: string,
  figures: Problem['figures'],
): { readonly problems: readonly Problem[] } {
  return { problems: [{ code, path: [name, 'border'], found: name, figures }] };
}
