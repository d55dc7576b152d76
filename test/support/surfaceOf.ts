import type {
  DoorwaySpec,
  EdgeFacts,
  Job,
  ObstacleSpec,
  PatternSpec,
  SurfaceSpec,
} from '../../src/job/Job.ts';
import { readLength, type System, type Ticks } from '../../src/measure/index.ts';
import { tileOf } from '../pattern/support/tileOf.ts';

/** Ticks of a length in words, such as '8 ft 2 1/4 in'. */
export function ticks(text: string): Ticks {
  const read = readLength(text);
  if (!read.ok) throw new Error(`not a length: ${text}`);
  return read.ticks;
}

/** A wall's facts as the job reader's defaults give them. */
export function wallFacts(over: Partial<EdgeFacts> = {}): EdgeFacts {
  return { meets: 'wall', gap: 2032, gapMax: 4064, touch: true, seen: 'plain', ...over };
}

export interface SurfaceOptions {
  /** Facts for all walls, and more for single ones by their id. */
  readonly facts?: Partial<EdgeFacts>;
  readonly walls?: Readonly<Record<string, Partial<EdgeFacts>>>;
  readonly doorways?: readonly DoorwaySpec[];
  readonly obstacles?: readonly ObstacleSpec[];
  readonly pattern?: Partial<PatternSpec>;
  readonly start?: Partial<SurfaceSpec['start']>;
  readonly over?: Partial<SurfaceSpec>;
}

type Corner = readonly [x: Ticks, y: Ticks];

/** A surface whose walls and diagonals read exactly what the corners say; corners are named A, B, C … */
export function surfaceOf(corners: readonly Corner[], options: SurfaceOptions = {}): SurfaceSpec {
  const n = corners.length;
  const name = (i: number) => String.fromCharCode(65 + (i % n));
  const length = (i: number, j: number) =>
    Math.round(Math.hypot(corners[j % n]![0] - corners[i]![0], corners[j % n]![1] - corners[i]![1]));
  const isSquare = corners.every((_, i) => angleAt(corners, i) % 45 === 0);
  return {
    name: 'floor',
    kind: 'floor',
    corners: corners.map((_, i) => ({ name: name(i), angleDeg: angleAt(corners, i) })),
    walls: corners.map((_, i) => {
      const id = `${name(i)}-${name(i + 1)}`;
      const readings = [length(i, i + 1)];
      const facts = wallFacts({ ...options.facts, ...options.walls?.[id] });
      return { id, from: name(i), to: name(i + 1), readings, ...facts };
    }),
    // Square corners fix the shape by themselves; a diagonal rounded to a tick would bend it by one.
    diagonals: corners.slice(isSquare ? n : 2, -1).map((_, i) => {
      return { id: `A-${name(i + 2)}`, from: 'A', to: name(i + 2), readings: [length(0, i + 2)] };
    }),
    precision: { kind: 'stated', sd: 1016 },
    cornerChecks: [],
    baseLine: [],
    setAside: [],
    doorways: options.doorways ?? [],
    obstacles: options.obstacles ?? [],
    exposure: 'dry',
    pattern: { name: 'straight', tile: 'field', turnedDeg: 0, along: 'A-B', ...options.pattern },
    start: { along: { kind: 'best' }, across: { kind: 'best' }, ...options.start },
    zones: { kind: 'count', count: 1 },
    minWeb: 4064,
    minStrip: 8128,
    minShare: 0.5,
    ...options.over,
  };
}

function angleAt(corners: readonly Corner[], i: number): number {
  const n = corners.length;
  const [a, b, c] = [corners[(i + n - 1) % n]!, corners[i]!, corners[(i + 1) % n]!];
  const turn = Math.atan2(a[1] - b[1], a[0] - b[0]) - Math.atan2(c[1] - b[1], c[0] - b[0]);
  return (Math.round((turn * 180e6) / Math.PI) / 1e6 + 360) % 360;
}

/** Corners of a rectangle. */
export function rectangle(width: Ticks, height: Ticks): Corner[] {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

/** What a layout asks of a job: one tile called `field`, a joint, and the system. */
export function jobOf(
  length: Ticks,
  width: Ticks,
  joint: Ticks,
  system: System = 'inches',
): Pick<Job, 'tiles' | 'joint' | 'print'> {
  const tile = { ...tileOf('field', length, width), name: 'grey porcelain' };
  return {
    tiles: [tile],
    joint,
    print: { paper: 'letter', system, step: system === 'inches' ? 508 : 320, crew: ['en'], owner: 'en' },
  };
}
