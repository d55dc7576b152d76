import type { Point } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { placeProblems } from '../job/placeProblems.ts';
import { readJob } from '../job/readJob.ts';
import { cornersOf } from '../job/sections/walls.ts';
import type { Path } from '../job/shape/Trouble.ts';
import { valueAt, withValue } from '../job/shape/valueAt.ts';
import { systemOf } from '../job/systemOf.ts';
import type { System } from '../measure/index.ts';
import { makeAdjustment } from '../room/makeAdjustment.ts';
import { makeRoom } from '../room/makeRoom.ts';
import type { Adjustment, Room } from '../room/Room.ts';
import { draftOf } from './draftOf.ts';
import type { LiveDiagonal, LiveRoom, LiveWall } from './LiveRoom.ts';
import { roomNames } from './roomNames.ts';
import { sketchLengths } from './sketchLengths.ts';

type Shaped = Pick<LiveRoom, 'corners' | 'doors' | 'obstacles'> & {
  readonly adjustment?: Adjustment;
  readonly room?: Room;
};

const ticksPerMm = 320;

/** A surface of a job in which everything but the floor is made up; undefined where even that cannot be read. */
function surfaceOf(floor: unknown, system: System): SurfaceSpec | undefined {
  const job = {
    title: '-',
    revision: { date: '2000-01-01' },
    print: { units: system },
    tile: { field: { read: '1 ft x 1 ft' } },
    joint: '3 mm',
    floor,
  };
  return readJob(JSON.stringify(job), 'job.yaml', 'job').job?.surfaces[0];
}

/** Walls that are not read get a length to draw them with; diagonals and checks would contradict those. */
function sketched(floor: unknown, unread: readonly string[]): unknown {
  const { walls, corners } = roomNames({ floor }, ['floor']);
  const plain = surfaceOf(
    { walls: unread.reduce((all, wall) => withValue(all, [wall], '1 m'), valueAt(floor, ['walls'])) },
    'mm',
  );
  const readings = walls.map((wall, i) => (unread.includes(wall) ? undefined : plain?.walls[i]?.readings[0]));
  const angles = corners.map((corner) => Number(valueAt(floor, ['angles', corner]) ?? 90) || 90);
  const lengths = sketchLengths(readings, angles);
  const made = Object.fromEntries(
    walls.map((wall, i) => [wall, `${(lengths[i]! / ticksPerMm).toFixed(1)} mm`]),
  );
  const keep = ['angles', 'doorways', 'obstacles'].filter((key) => valueAt(floor, [key]) !== undefined);
  return Object.fromEntries([['walls', made], ...keep.map((key) => [key, valueAt(floor, [key])])]);
}

const doorsOf = ({ edges }: Room): readonly (readonly Point[])[] =>
  edges.filter(({ id }) => /:(line|left|right)/.test(id)).map(({ from, to }) => [from, to]);

function fromRoom(surface: SurfaceSpec, room: Room): Shaped {
  return {
    corners: surface.corners.map(({ name }, i) => ({ name, at: room.corners[i]! })),
    doors: doorsOf(room),
    obstacles: room.obstacles.map(({ name, ring }) => ({ name, ring })),
    adjustment: room.adjustment,
    room,
  };
}

/** A room from a surface; where the readings contradict each other, the corners that fit them best all the same. */
function shaped(surface: SurfaceSpec, system: System): Shaped | undefined {
  const made = makeRoom(surface, system);
  if ('room' in made) return fromRoom(surface, made.room);
  if (surface.walls.length < 3 || surface.walls.some(({ readings }) => readings.length === 0))
    return undefined;
  const bare = makeRoom({ ...surface, doorways: [], obstacles: [] }, system);
  if ('room' in bare) return fromRoom(surface, bare.room);
  const { corners, adjustment } = makeAdjustment(surface);
  if (corners.some(([x, y]) => !Number.isFinite(x) || !Number.isFinite(y))) return undefined;
  return {
    corners: surface.corners.map(({ name }, i) => ({ name, at: corners[i]! })),
    doors: [],
    obstacles: [],
    adjustment,
  };
}

function suspectsOf(
  adjustment: Adjustment | undefined,
  problems: readonly Problem[],
  floor: Path,
): ReadonlySet<string> {
  const named = adjustment?.suspects.flatMap(({ ids }) => ids) ?? [];
  const told = problems
    .filter(({ path }) => path.length > floor.length + 1 && floor.every((key, i) => path[i] === key))
    .filter(({ code }) => code === 'misclosure' || code === 'triangle' || code === 'readingsDisagree')
    .map(({ path }) => String(path[floor.length + 1]));
  return new Set([...named, ...told]);
}

/** A wall's face without the openings in it; from corner to corner where there is no room yet. */
function facesOf(id: string, from: Point, to: Point, room: Room | undefined): readonly (readonly Point[])[] {
  const parts = room?.edges.filter(({ name }) => name === id) ?? [];
  return parts.length > 0 ? parts.map((edge) => [edge.from, edge.to]) : [[from, to]];
}

function wallsOf(
  { corners, adjustment, room }: Shaped,
  unread: readonly string[],
  suspects: ReadonlySet<string>,
): readonly LiveWall[] {
  return corners.map(({ name, at }, i): LiveWall => {
    const next = corners[(i + 1) % corners.length]!;
    const id = `${name}-${next.name}`;
    const reading = adjustment?.readings.find((one) => one.kind === 'wall' && one.id === id);
    const state = unread.includes(id) ? 'unread' : suspects.has(id) ? 'suspect' : 'read';
    const sizes = reading && state !== 'unread' ? { used: reading.used, correction: reading.correction } : {};
    return { id, from: at, to: next.at, faces: facesOf(id, at, next.at, room), state, ...sizes };
  });
}

function diagonalsOf(
  { corners, adjustment }: Shaped,
  suspects: ReadonlySet<string>,
): readonly LiveDiagonal[] {
  const at = (name: string | undefined) => corners.find((corner) => corner.name === name)?.at;
  return (adjustment?.readings ?? []).flatMap(({ id, kind }) => {
    const [from, to] = (cornersOf(id) ?? []).map(at);
    return kind === 'diagonal' && from && to ? [{ id, from, to, suspect: suspects.has(id) }] : [];
  });
}

/** A job file as far as it can be read, and everything that is wrong with it. */
export interface FormReading {
  /** There is one when the file as such has no problem; its rooms may have some all the same. */
  readonly job?: Job;
  readonly problems: readonly Problem[];
}

/** Everything that is wrong with a job file: with its text, or, where that can be read, with the rooms that it gives. */
export function readForm(text: string): FormReading {
  const file = 'job.yaml';
  const { job, problems } = readJob(text, file, 'job');
  if (!job) return { problems };
  const found = job.surfaces.flatMap((surface) => {
    const made = makeRoom(surface, job.print.system);
    return 'problems' in made ? made.problems : [];
  });
  return { job, problems: placeProblems(found, text, file) };
}

/** The floor as the job has it, or as much of it as can be read. */
function surfaceToDraw(tree: unknown, floor: Path, { job, problems }: FormReading, system: System) {
  const ready = job?.surfaces.find(({ name }) => name === floor.at(-1));
  if (ready) return { surface: ready, unread: [] };
  const draft = draftOf(tree, floor, problems);
  const given = draft.unread.length > 0 ? sketched(draft.floor, draft.unread) : draft.floor;
  const surface = surfaceOf(given, system) ?? surfaceOf({ walls: valueAt(given, ['walls']) }, system);
  return { surface, unread: draft.unread };
}

/**
 * The floor at a path of a job file as far as it can be drawn: with all that can be read of it, at made-up lengths where a
 * wall is not read yet. Undefined where there are no walls to draw.
 */
export function makeLiveRoom(tree: unknown, floor: Path, reading: FormReading): LiveRoom | undefined {
  const system = systemOf(tree);
  const { surface, unread } = surfaceToDraw(tree, floor, reading, system);
  const found = surface && shaped(surface, system);
  if (!found) return undefined;
  const whole = unread.length === 0 ? found.adjustment : undefined;
  const suspects = suspectsOf(whole, reading.problems, floor);
  return {
    floor,
    system,
    corners: found.corners,
    walls: wallsOf(found, unread, suspects),
    diagonals: whole ? diagonalsOf(found, suspects) : [],
    doors: found.doors,
    obstacles: found.obstacles,
    ...(whole ? { adjustment: whole } : {}),
  };
}
