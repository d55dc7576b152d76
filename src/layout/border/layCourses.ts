import type { BorderCourse, Job, SurfaceSpec, TileSpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomInFrame } from '../frame/frameRoom.ts';
import { makeGround } from '../frame/Ground.ts';
import type { SoftLine } from '../movement/SoftLine.ts';
import type { Border } from './Border.ts';
import type { BorderSide } from './BorderSide.ts';
import type { NamedStrip } from './borderPieces.ts';
import { type CourseDepth, courseDepths } from './courseDepths.ts';
import { courseEnds } from './courseEnds.ts';
import { courseRegion } from './courseRegion.ts';
import { innerRoom } from './innerRoom.ts';
import { layParted } from './layParted.ts';
import { sideLine } from './sideLine.ts';

/** What courses are laid on. */
export interface CourseGround {
  readonly job: Pick<Job, 'tiles' | 'joint' | 'print'>;
  readonly surface: SurfaceSpec;
  readonly frame: Pick<RoomInFrame, 'obstacles'>;
  /** Soft joints that part the courses. */
  readonly soft?: readonly SoftLine[];
}

/** The strips of all courses along all sides, and the room that is left inside them. */
export interface LaidCourses {
  readonly strips: readonly NamedStrip[];
  readonly inner: RoomInFrame;
  readonly depth: Ticks;
}

/** Lays courses along every side, named by the side's letters; the side along which there is no room for them, where there is one. */
export function layCourses(
  ground: CourseGround,
  sides: readonly BorderSide[],
  courses: Border['courses'],
  lettersOf: (side: BorderSide, at: number) => string,
): LaidCourses | { readonly wall: string; readonly depth: Ticks } {
  const { joint } = ground.job;
  const depths = courseDepths(
    courses.map(({ width }) => width),
    joint,
  );
  const depth = depths.at(-1)!.to;
  const made = innerRoom(sides, depth, joint, ground.frame.obstacles);
  if ('wall' in made) return { wall: made.wall, depth };
  const strips: NamedStrip[] = [];
  for (const [k, course] of courses.entries()) {
    for (const [at, side] of sides.entries()) {
      const one = { sides, depth, course, own: depths[k]!, at, number: k + 1, of: courses.length };
      const strip = stripOf(ground, { ...one, letters: lettersOf(side, at) });
      if (!strip) return { wall: side.wall, depth };
      strips.push(strip);
    }
  }
  return { strips, inner: made.room, depth };
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
  readonly letters: string;
}

function stripOf(ground: CourseGround, one: OneCourse): NamedStrip | null {
  const { job, surface, frame, soft = [] } = ground;
  const { sides, at, own, course } = one;
  const tile = tileOf(job.tiles, course.tile);
  const side = sides[at]!;
  const ends = courseEnds({ sides, joint: job.joint, depth: one.depth }, at, own, course);
  const ripped = tile.width - course.width > 1;
  const region = courseRegion(side, ends, own, ripped, { joint: job.joint, obstacles: frame.obstacles });
  if (!region) return null;
  const least = { ...surface, minStrip: Math.min(surface.minStrip, course.width) };
  const laid = layParted(
    makeGround(region.room, [], least, job.print.step),
    sideLine(side, side.facts.gap + own.to, region.corners),
    tile,
    job.joint,
    soft,
  );
  const { letters } = one;
  return {
    ...laid,
    tile: course.tile,
    of: { wall: side.wall, course: one.number },
    prefix: one.of > 1 ? `${letters}${one.number}-` : `${letters}-`,
    first: 1,
  };
}

/** The tile of that key. */
export function tileOf(tiles: readonly TileSpec[], key: BorderCourse['tile']): TileSpec {
  return tiles.find((tile) => tile.key === key) ?? tiles[0]!;
}
