import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { makePattern, makePlain, type Pattern } from '../pattern/index.ts';
import type { Room } from '../room/Room.ts';
import { sightTooShort } from './faults/sightTooShort.ts';
import { drawnGround } from './frame/drawnGround.ts';
import { frameRoom, type RoomInFrame } from './frame/frameRoom.ts';
import { type Ground, makeGround } from './frame/Ground.ts';
import { turnOf } from './frame/turnOf.ts';
import type { SoftLine } from './movement/SoftLine.ts';
import type { WideJoint } from './movement/WideJoint.ts';
import { refusals } from './refusals.ts';
import { type Apart, setApart } from './setApart.ts';
import { chooseStart, type StartAnswer } from './start/chooseStart.ts';

/** The part of a job that a layout hangs on. */
export type LayoutJob = Pick<Job, 'tiles' | 'joint' | 'print'>;

/** What is asked of a floor beside what its job says. */
export interface Wishes {
  /** Joints to lay wider than the others: they go to the nearest joints of the start. */
  readonly wide?: readonly WideJoint[];
  /** Soft joints that part border and inlays, where there are such. */
  readonly soft?: readonly SoftLine[];
}

/** A floor made ready: all that is the same wherever its pattern is laid from, and where it best is. */
export interface ReadyFloor {
  readonly job: LayoutJob;
  readonly surface: SurfaceSpec;
  readonly room: Room;
  readonly pattern: Pattern;
  /** The pattern without colors: they change neither where it starts nor where its lines lie. */
  readonly plain: Pattern;
  /** Radians that bring the pattern's axes back to the room's. */
  readonly turn: number;
  readonly frame: RoomInFrame;
  readonly apart: Apart;
  readonly ground: Ground;
  /** The ground drawn together at the joints that are wished wide: what the start is chosen on. */
  readonly drawn: Ground;
  readonly wished: readonly WideJoint[];
  readonly chosen: Exclude<StartAnswer, { readonly unknown: string }>;
}

/** Brings a floor into the frame of its pattern, sets border and inlays apart and searches for the start; or says why it is not laid at all. */
export function readyFloor(
  job: LayoutJob,
  surface: SurfaceSpec,
  room: Room,
  { wide: wished = [], soft = [] }: Wishes = {},
): ReadyFloor | { readonly problems: readonly Problem[] } {
  const withJoint = (joint: number) => makePlain(surface.pattern, job.tiles, joint);
  const pattern = makePattern(surface.pattern, job.tiles, job.joint);
  const plain = withJoint(job.joint);
  const refused = [
    ...sightTooShort(surface, room, job.print.system),
    ...refusals(job, surface, room, pattern),
  ];
  if (refused.length > 0) return { problems: refused };
  const turned = turnOf(room, surface.pattern);
  const frame = frameRoom(room, turned);
  const apart = setApart({ job, surface, room, frame, soft, wide: wished }, plain);
  if ('problems' in apart) return apart;
  const ground = groundIn(apart, room, surface, job, plain);
  const drawn = drawnGround(ground, wished);
  const chosen = chooseStart({ ground: drawn, pattern: plain, surface, withJoint });
  if ('unknown' in chosen) return { problems: [unknownEdge(surface, chosen.axis, chosen.unknown, drawn)] };
  const { turn } = turned;
  return { job, surface, room, pattern, plain, turn, frame, apart, ground, drawn, wished, chosen };
}

/** What the field's pattern lies on: the room, less its border and its inlays. */
function groundIn(
  apart: Apart,
  { openings }: Room,
  surface: SurfaceSpec,
  { tiles, print }: LayoutJob,
  plain: Pattern,
): Ground {
  const names = openings.map(({ name }) => name);
  const ground = makeGround(apart.room, names, surface, print.step);
  const hasChips = (key: string) => tiles.some((tile) => tile.key === key && tile.chips !== undefined);
  return plain.tiles.every(({ tile }) => hasChips(tile)) ? { ...ground, sheets: true } : ground;
}

function unknownEdge({ name }: SurfaceSpec, axis: string, found: string, { faces }: Ground): Problem {
  const names = [...new Set(faces.map((face) => face.name))].join(', ');
  return {
    code: 'unknownEdge',
    path: [name, 'start', axis],
    found,
    figures: { name: found, names, near: 'no' },
  };
}
