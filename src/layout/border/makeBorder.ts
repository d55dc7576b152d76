import type { BorderCourse, Job, SurfaceSpec, TileSpec } from '../../job/Job.ts';
import type { Problem } from '../../job/Problem.ts';
import { printLength, type Ticks } from '../../measure/index.ts';
import type { Room } from '../../room/Room.ts';
import { intoFrame, type RoomInFrame } from '../frame/frameRoom.ts';
import { makeGround } from '../frame/Ground.ts';
import { turnOf } from '../frame/turnOf.ts';
import type { Border } from './Border.ts';
import { type BorderSide, borderSides } from './BorderSide.ts';
import { type BorderLaid, borderPieces, type NamedStrip } from './borderPieces.ts';
import { type CourseDepth, courseDepths } from './courseDepths.ts';
import { courseEnds } from './courseEnds.ts';
import { courseRegion } from './courseRegion.ts';
import { doorwayRegion } from './doorwayRegion.ts';
import { innerRoom } from './innerRoom.ts';
import { layCourse } from './layCourse.ts';
import { doorwayLine, sideLine } from './sideLine.ts';

/** What a border is laid on: a surface's room in the pattern's frame. */
export interface BorderGround {
  readonly job: Pick<Job, 'tiles' | 'joint' | 'print'>;
  readonly surface: SurfaceSpec;
  readonly room: Room;
  readonly frame: RoomInFrame;
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
  const depths = courseDepths(
    courses.map(({ width }) => width),
    job.joint,
  );
  const depth = depths.at(-1)!.to;
  const sides = wallsOf(ground);
  const figures = { width: printLength(depth, job.print.system) };
  const made = innerRoom(sides, depth, job.joint, frame.obstacles);
  if ('wall' in made) return refused(surface, 'borderTooWide', { ...figures, wall: made.wall });
  const strips: NamedStrip[] = [];
  for (const [k, course] of courses.entries()) {
    for (const at of sides.keys()) {
      const strip = stripOf(ground, {
        sides,
        depth,
        course,
        own: depths[k]!,
        at,
        number: k + 1,
        of: courses.length,
      });
      if (!strip) return refused(surface, 'borderTooWide', { ...figures, wall: sides[at]!.wall });
      strips.push(strip);
    }
  }
  strips.push(...sides.flatMap((side) => doorwaysOf(ground, side, courses[0]!.tile)));
  const lines = sides.map(({ wall, facts }, i) => {
    const { from, to } = made.room.edges.find(({ name }) => name === sides[i]!.wall)!;
    return { edge: wall, off: facts.gap + depth, from, to };
  });
  return {
    border: { courses, depth, lines, inner: made.room.field },
    laid: borderPieces(strips, job.joint),
    inner: made.room,
  };
}

/** One course along one wall. */
interface OneCourse {
  readonly sides: readonly BorderSide[];
  /** Of the whole border. */
  readonly depth: Ticks;
  readonly course: Border['courses'][number];
  readonly own: CourseDepth;
  readonly at: number;
  readonly number: number;
  /** How many courses there are. */
  readonly of: number;
}

function stripOf(ground: BorderGround, one: OneCourse): NamedStrip | null {
  const { job, surface, frame } = ground;
  const { sides, at, own, course } = one;
  const tile = tileOf(job.tiles, course.tile);
  const side = sides[at]!;
  const ends = courseEnds({ sides, joint: job.joint, depth: one.depth }, at, own, course.corners);
  const ripped = tile.width - course.width > 1;
  const region = courseRegion(side, ends, own, ripped, { joint: job.joint, obstacles: frame.obstacles });
  if (!region) return null;
  const least = { ...surface, minStrip: Math.min(surface.minStrip, course.width) };
  const laid = layCourse(
    makeGround(region.room, [], least, job.print.step),
    sideLine(side, side.facts.gap + own.to, region.corners),
    tile,
    job.joint,
  );
  const letters = side.wall.replace('-', '');
  return {
    ...laid,
    tile: course.tile,
    of: { wall: side.wall, course: one.number },
    prefix: one.of > 1 ? `${letters}${one.number}-` : `${letters}-`,
    first: 1,
  };
}

/** The floor of the doorways behind the border, in the tile of its outer course. */
function doorwaysOf({ job, surface, frame }: BorderGround, side: BorderSide, key: string): NamedStrip[] {
  const tile = tileOf(job.tiles, key);
  const strips: NamedStrip[] = [];
  let first = 1;
  for (const doorway of side.doorways) {
    const region = doorwayRegion(frame, side, doorway, job.joint);
    if (!region) continue;
    const ground = makeGround(region, side.doorways, surface, job.print.step);
    const laid = layCourse(ground, doorwayLine(side, region, tile, job.joint), tile, job.joint);
    const prefix = `${side.wall.replace('-', '')}-d`;
    strips.push({ ...laid, tile: key, of: { wall: side.wall, course: 0 }, prefix, first });
    first += laid.pieces.length;
  }
  return strips;
}

function tileOf(tiles: readonly TileSpec[], key: BorderCourse['tile']): TileSpec {
  return tiles.find((tile) => tile.key === key) ?? tiles[0]!;
}

/** A problem of the job's border. */
export function refused(
  { name }: Pick<SurfaceSpec, 'name'>,
  code: string,
  figures: Problem['figures'],
): { readonly problems: readonly Problem[] } {
  return { problems: [{ code, path: [name, 'border'], found: name, figures }] };
}
