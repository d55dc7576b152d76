import type { DoorSide, DoorwaySpec, EdgeFacts, ObstacleSpec, SurfaceSpec } from '../../../src/job/Job.ts';
import type { Problem } from '../../../src/job/Problem.ts';
import { readLength, type Ticks } from '../../../src/measure/index.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import type { Room } from '../../../src/room/Room.ts';

/** Inches in ticks. */
export const inch = (inches: number): Ticks => Math.round(inches * 8128);

export const wallFacts: EdgeFacts = {
  meets: 'wall',
  gap: inch(1 / 4),
  gapMax: inch(1 / 2),
  touch: true,
  seen: 'plain',
};

type Read = string | Ticks | readonly (string | Ticks)[];

const ticks = (read: string | Ticks): Ticks => {
  if (typeof read === 'number') return read;
  const reading = readLength(read);
  if (!reading.ok) throw new Error(`${read}: ${reading.code}`);
  return reading.ticks;
};
const all = (read: Read): Ticks[] => (Array.isArray(read) ? read : [read]).map((one) => ticks(one));

export interface Wish {
  /** Readings by wall, in the order walked. */
  readonly walls: Readonly<Record<string, Read>>;
  readonly diagonals?: Readonly<Record<string, Read>>;
  /** Inner angles that are not square. */
  readonly angles?: Readonly<Record<string, number>>;
  readonly precision?: SurfaceSpec['precision'];
  /** Legs in inches. */
  readonly cornerChecks?: readonly {
    readonly corner: string;
    readonly legs: readonly [number, number];
    readonly read: Read;
  }[];
  readonly baseLine?: SurfaceSpec['baseLine'];
  readonly setAside?: readonly string[];
  readonly doorways?: readonly DoorwaySpec[];
  readonly obstacles?: readonly ObstacleSpec[];
  readonly facts?: Readonly<Record<string, Partial<EdgeFacts>>>;
}

const ends = (id: string) => {
  const [from = '', to = ''] = id.split('-');
  return { id, from, to };
};

/** A floor in the shape of a job's surface, of the parts that a room is made from. */
export function surface(wish: Wish): SurfaceSpec {
  const ids = Object.keys(wish.walls);
  return {
    name: 'floor',
    kind: 'floor',
    corners: ids.map((id) => {
      const name = ends(id).from;
      return { name, angleDeg: wish.angles?.[name] ?? 90 };
    }),
    walls: ids.map((id) => ({
      ...ends(id),
      ...wallFacts,
      ...wish.facts?.[id],
      readings: all(wish.walls[id]!),
    })),
    diagonals: Object.entries(wish.diagonals ?? {}).map(([id, read]) => ({
      ...ends(id),
      readings: all(read),
    })),
    precision: wish.precision ?? { kind: 'stated', sd: inch(1 / 8) },
    cornerChecks: (wish.cornerChecks ?? []).map(({ corner, legs, read }) => ({
      corner,
      legs: [inch(legs[0]), inch(legs[1])],
      readings: all(read),
    })),
    baseLine: wish.baseLine ?? [],
    setAside: wish.setAside ?? [],
    doorways: wish.doorways ?? [],
    obstacles: wish.obstacles ?? [],
    exposure: 'dry',
    pattern: { name: 'straight', tile: 'field', turnedDeg: 0, along: ids[0] ?? '' },
    start: { along: { kind: 'best' }, across: { kind: 'best' } },
    zones: { kind: 'auto' },
    minWeb: inch(1 / 2),
    minStrip: inch(2),
    minShare: 0.5,
  };
}

/** The room of a wish that has no problems. */
export function roomOf(wish: Wish | SurfaceSpec): Room {
  const made = makeRoom('name' in wish ? wish : surface(wish));
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.room;
}

/** The problems of a wish that makes no room. */
export function problemsOf(wish: Wish): readonly Problem[] {
  const made = makeRoom(surface(wish));
  return 'problems' in made ? made.problems : [];
}

export const undercut = (tuck: number): DoorSide => ({
  kind: 'undercut',
  tuck: inch(tuck),
  facts: { ...wallFacts, meets: 'casing', gapMax: inch(tuck - 1 / 8), seen: 'hidden' },
});
export const post = (width: number, depth: number): DoorSide => ({
  kind: 'post',
  width: inch(width),
  depth: inch(depth),
  facts: { ...wallFacts, meets: 'post' },
});
export const plain: DoorSide = { kind: 'plain', facts: { ...wallFacts, meets: 'jamb' } };

/** A doorway 9 in from corner D in wall D-A, 30 in clear, its closed-door line 2 3/8 in behind the face. */
export function doorway(wish: Partial<DoorwaySpec> = {}): DoorwaySpec {
  return {
    name: 'hall',
    wall: 'D-A',
    fromCorner: 'D',
    from: inch(9),
    clear: inch(30),
    wallThickness: inch(4.75),
    doorLine: inch(2.375),
    left: plain,
    right: plain,
    beyond: 'wood',
    line: { ...wallFacts, meets: 'doorway', gap: 0, gapMax: 0 },
    onlyExit: true,
    ...wish,
  };
}

/** An obstacle with a gap of 1/4 in. */
export function obstacle(name: string, shape: ObstacleSpec['shape'], gap = 1 / 4): ObstacleSpec {
  return { name, ...wallFacts, meets: 'cabinet', gap: inch(gap), shape };
}

export const circle = (
  diameter: number,
  a: [string, number],
  b: [string, number],
): ObstacleSpec['shape'] => ({
  kind: 'circle',
  diameter: inch(diameter),
  from: [
    { wall: a[0], distance: inch(a[1]) },
    { wall: b[0], distance: inch(b[1]) },
  ],
});
export const rectangle = (
  along: number,
  out: number,
  a: [string, number],
  b: [string, number],
): ObstacleSpec['shape'] => ({
  kind: 'rectangle',
  along: inch(along),
  out: inch(out),
  from: [
    { wall: a[0], distance: inch(a[1]) },
    { wall: b[0], distance: inch(b[1]) },
  ],
});

/** Points in inches as ticks. */
export const points = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([x, y]): [number, number] => [inch(x), inch(y)]);

/** A rectangle of walls, inches. */
export const box = (across: number, deep: number): Wish['walls'] => ({
  'A-B': inch(across),
  'B-C': inch(deep),
  'C-D': inch(across),
  'D-A': inch(deep),
});
