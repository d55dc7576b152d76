import type {
  BorderCourse,
  DoorwaySpec,
  InlaySpec,
  ObstacleSpec,
  PatternAlong,
  PatternSpec,
  StartWish,
  SurfaceSpec,
} from '../../src/job/Job.ts';

/** The same room measured from another first corner: the room's frame turns with it. */
export function renumbered(surface: SurfaceSpec, first: number): SurfaceSpec {
  const turned = <T>(list: readonly T[]) => list.map((_, i) => list[(i + first) % list.length]!);
  return { ...surface, corners: turned(surface.corners), walls: turned(surface.walls) };
}

/**
 * The mirror image of a room with its pattern, start and doorways, walked so that it is on the left again.
 * Corners keep their letters, so walls are named the other way round. `module` is that of the courses.
 */
export function mirrored(surface: SurfaceSpec, module: number): SurfaceSpec {
  const walls = [...surface.walls].reverse();
  return {
    ...surface,
    corners: [...surface.corners].reverse(),
    walls: walls.map((_, i) => {
      // Corners reversed begin with the last one, so the first wall is the one before it.
      const own = walls[(i + 1) % walls.length]!;
      return { ...own, id: flipped(own.id), from: own.to, to: own.from };
    }),
    // What came to a corner leaves it now.
    cornerChecks: surface.cornerChecks.map((check) => ({ ...check, legs: [check.legs[1], check.legs[0]] })),
    setAside: surface.setAside.map(flippedAside(surface)),
    doorways: surface.doorways.map(flippedDoorway),
    obstacles: surface.obstacles.map(flippedObstacle),
    ...(surface.falls && { falls: { ...surface.falls, from: surface.falls.from.map(flipped) } }),
    ...(surface.inlays && { inlays: surface.inlays.map((inlay) => flippedInlay(inlay, module)) }),
    pattern: flippedPattern(surface.pattern, module),
    ...(surface.border && { border: surface.border.map(flippedCourse) }),
    start: {
      ...surface.start,
      along: flippedWish(surface.start.along),
      across: flippedWish(surface.start.across),
    },
  };
}

/** `A-B` is `B-A` when walked the other way; other names stay. */
function flipped(name: string): string {
  const [, from, to] = /^([A-Z])-([A-Z])$/.exec(name) ?? [];
  return from && to ? `${to}-${from}` : name;
}

/** Walls are named the other way round, diagonals are not. */
const flippedAside = (surface: SurfaceSpec) => (id: string) =>
  surface.walls.some((wall) => wall.id === id) ? flipped(id) : id;

function flippedDoorway(door: DoorwaySpec): DoorwaySpec {
  return { ...door, wall: flipped(door.wall), left: door.right, right: door.left };
}

function flippedInlay({ from: [one, other], ...inlay }: InlaySpec, module: number): InlaySpec {
  return {
    ...inlay,
    from: [
      { ...one, wall: flipped(one.wall) },
      { ...other, wall: flipped(other.wall) },
    ],
    pattern: flippedPattern(inlay.pattern, module),
    ...(inlay.border && { border: inlay.border.map(flippedCourse) }),
  };
}

function flippedObstacle({ shape, ...rest }: ObstacleSpec): ObstacleSpec {
  if (shape.kind === 'polygon')
    return { ...rest, shape: { ...shape, walls: [flipped(shape.walls[0]), flipped(shape.walls[1])] } };
  const [one, other] = shape.from;
  const from = [
    { ...one, wall: flipped(one.wall) },
    { ...other, wall: flipped(other.wall) },
  ] as const;
  return { ...rest, shape: { ...shape, from } };
}

function flippedPattern(pattern: PatternSpec, module: number): PatternSpec {
  const { offset } = pattern;
  const turned = { ...pattern, along: flippedLine(pattern.along), turnedDeg: 0 - pattern.turnedDeg };
  if (!offset) return turned;
  if ('length' in offset) return { ...turned, offset: { length: module - offset.length } };
  return { ...turned, offset: { ...offset, numerator: offset.denominator - offset.numerator } };
}

/** Of a wall seen in a mirror, left is right. */
function flippedCourse<Course extends BorderCourse>(course: Course): Course {
  const { width } = course;
  const between = typeof width === 'object' && [flipped(width.between[0]), flipped(width.between[1])];
  const turned = between ? { ...course, width: { between } } : course;
  if (course.corners !== 'butted') return turned;
  return { ...turned, through: course.through === 'left' ? 'right' : 'left' };
}

function flippedLine(along: PatternAlong): PatternAlong {
  if (typeof along === 'string') return flipped(along);
  if (along.kind === 'shared') return { ...along, near: flipped(along.near) };
  // As a wall does, the line runs the other way, so that what lay on its left still does.
  return { ...along, from: flipped(along.to), to: flipped(along.from) };
}

function flippedWish(wish: StartWish): StartWish {
  if (wish.kind === 'best') return wish;
  if (wish.kind === 'centred')
    return { ...wish, between: [flipped(wish.between[0]), flipped(wish.between[1])] };
  return wish.kind === 'cut' ? { ...wish, at: flipped(wish.at) } : { ...wish, on: flipped(wish.on) };
}
