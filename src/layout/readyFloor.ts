import { shapeArea } from '../geometry/index.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { makePattern, makePlain, type Pattern, patternProblems } from '../pattern/index.ts';
import type { Room } from '../room/Room.ts';
import { frameRoom, type RoomInFrame } from './frame/frameRoom.ts';
import { type Ground, makeGround } from './frame/Ground.ts';
import { turnOf } from './frame/turnOf.ts';
import { type Apart, setApart } from './setApart.ts';
import { chooseStart, type StartAnswer } from './start/chooseStart.ts';

/** More pieces than this are refused: nobody cuts them from a list. */
export const MOST_PIECES = 100_000;

/** The part of a job that a layout hangs on. */
export type LayoutJob = Pick<Job, 'tiles' | 'joint' | 'print'>;

/** A floor made ready: all that is the same wherever its pattern is laid from, and where it best is. */
export interface ReadyFloor {
  readonly job: LayoutJob;
  readonly surface: SurfaceSpec;
  readonly room: Room;
  readonly pattern: Pattern;
  /** The pattern without colors: they change neither where it starts nor where its lines lie. */
  readonly plain: Pattern;
  /** Degrees that bring the pattern's axes back to the room's. */
  readonly turn: number;
  readonly frame: RoomInFrame;
  readonly apart: Apart;
  readonly ground: Ground;
  readonly chosen: Exclude<StartAnswer, { readonly unknown: string }>;
}

/** Brings a floor into the frame of its pattern, sets border and inlays apart and searches for the start; or says why it is not laid at all. */
export function readyFloor(
  job: LayoutJob,
  surface: SurfaceSpec,
  room: Room,
): ReadyFloor | { readonly problems: readonly Problem[] } {
  const withJoint = (joint: number) => makePlain(surface.pattern, job.tiles, joint);
  const pattern = makePattern(surface.pattern, job.tiles, job.joint);
  const plain = withJoint(job.joint);
  const refused = refusals(job, surface, room, pattern);
  if (refused.length > 0) return { problems: refused };
  const turned = turnOf(room, surface.pattern);
  const frame = frameRoom(room, turned);
  const apart = setApart({ job, surface, room, frame }, plain);
  if ('problems' in apart) return apart;
  const ground = groundIn(apart, room, surface, job);
  const chosen = chooseStart({ ground, pattern: plain, surface, withJoint });
  if ('unknown' in chosen) return { problems: [unknownEdge(surface, chosen.axis, chosen.unknown, ground)] };
  return { job, surface, room, pattern, plain, turn: turned.turn, frame, apart, ground, chosen };
}

/** What the field's pattern lies on: the room, less its border and its inlays. */
function groundIn(
  apart: Apart,
  { openings }: Room,
  surface: SurfaceSpec,
  { print }: Pick<Job, 'print'>,
): Ground {
  const names = openings.map(({ name }) => name);
  return makeGround(apart.room, names, surface, print.step);
}

/** Why a pattern is not laid at all. */
function refusals(
  { tiles, print }: Pick<Job, 'tiles' | 'print'>,
  surface: SurfaceSpec,
  room: Room,
  pattern: Pattern,
): readonly Problem[] {
  const tooMany = tooManyPieces(surface, room, pattern);
  if (tooMany) return [tooMany];
  const found = patternProblems(pattern, surface.pattern, tiles, print.system);
  return found.map((one) => ({ ...one, path: [surface.name, 'pattern'], found: surface.name }));
}

function tooManyPieces({ name }: SurfaceSpec, { field }: Room, { a, b, tiles }: Pattern): Problem | null {
  const area = field.reduce((sum, shape) => sum + shapeArea(shape), 0);
  const about = Math.round((area * tiles.length) / (a[0] * b[1] - a[1] * b[0]));
  if (about <= MOST_PIECES) return null;
  const figures = { pieces: about, limit: MOST_PIECES };
  return { code: 'tooManyPieces', path: [name, 'pattern'], found: `${about}`, figures };
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
