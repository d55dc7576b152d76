import fc from 'fast-check';
import type {
  DoorSide,
  DoorwaySpec,
  EdgeFacts,
  Job,
  ObstacleSpec,
  PatternSpec,
  StartWish,
  SurfaceSpec,
} from '../../src/job/Job.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { jobOf, surfaceOf, wallFacts } from './surfaceOf.ts';

const IN = 8128;
const SIXTEENTH = 508;

/** A random job for a layout: a room of some kind, a tile, a pattern and where it starts. */
export interface RandomRoom {
  readonly kind: string;
  readonly job: Pick<Job, 'tiles' | 'joint' | 'print'>;
  readonly surface: SurfaceSpec;
}

type Corners = [number, number][];

const inches = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((sixteenths) => sixteenths * SIXTEENTH);

/** Room kinds from four lengths: w and h all over, a and b the parts cut out. */
const KINDS: Readonly<Record<string, (w: number, h: number, a: number, b: number, lean: number) => Corners>> =
  {
    rectangle: (w, h) => [
      [0, 0],
      [w, 0],
      [w, h],
      [0, h],
    ],
    outOfSquare: (w, h, _a, _b, lean) => [
      [0, 0],
      [w, 0],
      [w + lean, h - Math.round(lean / 3)],
      [-Math.round(lean / 2), h + lean],
    ],
    L: (w, h, a, b) => [
      [0, 0],
      [w, 0],
      [w, h - b],
      [w - a, h - b],
      [w - a, h],
      [0, h],
    ],
    leaningL: (w, h, a, b, lean) => [
      [0, 0],
      [w, lean],
      [w + lean, h - b],
      [w - a, h - b + lean],
      [w - a, h],
      [-lean, h],
    ],
    T: (w, h, a, b) => [
      [0, 0],
      [w, 0],
      [w, h - b],
      [w - a, h - b],
      [w - a, h],
      [Math.round(a * 0.7), h],
      [Math.round(a * 0.7), h - b],
      [0, h - b],
    ],
    U: (w, h, a, b) => [
      [0, 0],
      [w, 0],
      [w, h],
      [w - Math.round(a * 0.8), h],
      [w - Math.round(a * 0.8), h - b],
      [a, h - b],
      [a, h],
      [0, h],
    ],
    clipped: (w, h, a) => [
      [0, 0],
      [w, 0],
      [w, h - a],
      [w - a, h],
      [0, h],
    ],
  };

const facts = fc.record({
  gap: fc.constantFrom(1016, 1524, 2032, 3048),
  gapMax: fc.constantFrom(3048, 4064, 4064, 5080),
  touch: fc.boolean(),
  seen: fc.constantFrom<EdgeFacts['seen']>('hidden', 'plain', 'focal'),
});

const side: fc.Arbitrary<DoorSide> = fc.constantFrom<DoorSide>(
  { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) },
  {
    kind: 'undercut',
    tuck: 4064,
    facts: wallFacts({ meets: 'casing', gap: 2032, gapMax: 3048, seen: 'hidden' }),
  },
  {
    kind: 'post',
    width: Math.round(1.5 * IN),
    depth: Math.round(3.5 * IN),
    facts: wallFacts({ meets: 'post' }),
  },
  { kind: 'post', width: Math.round(1.5 * IN), depth: IN, facts: wallFacts({ meets: 'post' }) },
);

const doorway = fc
  .record({ from: inches(4, 10), clear: inches(24, 34), line: inches(1, 4), left: side, right: side })
  .map(({ from, clear, line, left, right }): DoorwaySpec => {
    return {
      name: 'hall',
      wall: 'A-B',
      fromCorner: 'A',
      from,
      clear,
      wallThickness: 2 * line,
      doorLine: line,
      left,
      right,
      beyond: 'wood',
      line: wallFacts({ meets: 'doorway', gap: 1524, gapMax: 2032, touch: false }),
      onlyExit: true,
    };
  });

/** Obstacles stand near corner A, measured from wall A-B and the wall that comes in to A. */
const obstacle = fc.record({
  kind: fc.constantFrom('flange', 'pipe', 'column', 'hearth', 'island'),
  x: inches(14, 40),
  y: inches(12, 40),
  size: inches(2, 24),
});

function obstacleOf(
  of: { kind: string; x: number; y: number; size: number },
  i: number,
  last: string,
): ObstacleSpec {
  const from = [
    { wall: 'A-B', distance: of.kind === 'hearth' ? 0 : of.y + i * 30 * IN },
    { wall: last, distance: of.x },
  ] as const;
  const name = `${of.kind}${i}`;
  const base = wallFacts({ gapMax: 2032 });
  if (of.kind === 'flange' || of.kind === 'pipe') {
    const diameter = of.kind === 'flange' ? 7 * IN : Math.round(1.25 * IN);
    return { ...base, name, meets: of.kind, shape: { kind: 'circle', diameter, from } };
  }
  return {
    ...base,
    name,
    meets: 'column',
    shape: { kind: 'rectangle', along: of.size, out: Math.round(of.size * 0.7), from },
  };
}

const pattern = fc
  .record({
    name: fc.constantFrom<PatternSpec['name']>('straight', 'straight', 'running'),
    offset: fc.constantFrom<NonNullable<PatternSpec['offset']>>(
      { numerator: 1, denominator: 2 },
      { numerator: 1, denominator: 3 },
      { numerator: 2, denominator: 5 },
      { length: 30000 },
    ),
    stepping: fc.constantFrom<'stepping' | 'alternating'>('stepping', 'alternating'),
    turnedDeg: fc.constantFrom(0, 0, 0, 45, 90, 30, -22.5),
    along: fc.constantFrom('A-B', 'A-B', 'B-C'),
  })
  .map(({ name, offset, stepping, ...rest }): Partial<PatternSpec> => {
    return name === 'straight' ? { name, ...rest } : { name, offset, stepping, ...rest };
  });

const wish: fc.Arbitrary<StartWish> = fc.oneof(
  { weight: 4, arbitrary: fc.constant<StartWish>({ kind: 'best' }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<StartWish>(
      { kind: 'tile', on: 'A-B' },
      { kind: 'joint', on: 'B-C' },
      { kind: 'cut', size: 5 * IN, at: 'A-B' },
    ),
  },
);

const parts = fc.record({
  kind: fc.constantFrom(...Object.keys(KINDS)),
  w: inches(64, 150),
  h: inches(64, 130),
  a: inches(20, 30),
  b: inches(24, 34),
  lean: fc.integer({ min: -3 * IN, max: 3 * IN }),
  facts: fc.array(facts, { minLength: 8, maxLength: 8 }),
  doors: fc.array(doorway, { maxLength: 1 }),
  obstacles: fc.array(obstacle, { maxLength: 2 }),
  pattern,
  along: wish,
  across: wish,
  length: fc.integer({ min: 7 * IN, max: 24 * IN }),
  square: fc.boolean(),
  width: fc.integer({ min: 6 * IN, max: 13 * IN }),
  joint: fc.constantFrom(508, 1016, 1524, 3048, 641),
});

/** Random rooms that the tape could have brought home: none is refused. */
export const randomRoom: fc.Arbitrary<RandomRoom> = parts
  .map((of): RandomRoom => {
    const corners = KINDS[of.kind]!(of.w, of.h, of.a, of.b, of.lean);
    const names = corners.map((_, i) => String.fromCharCode(65 + i));
    const last = `${names.at(-1)}-A`;
    const walls = Object.fromEntries(
      names.map((name, i) => [`${name}-${names[(i + 1) % names.length]}`, of.facts[i]!]),
    );
    const obstacles = of.obstacles.map((one, i) => obstacleOf(one, i, last));
    const start = { along: of.along, across: of.across };
    const surface = surfaceOf(corners, { walls, doorways: of.doors, obstacles, pattern: of.pattern, start });
    return { kind: of.kind, job: jobOf(of.length, of.square ? of.length : of.width, of.joint), surface };
  })
  .filter(({ surface }) => 'room' in makeRoom(surface));
