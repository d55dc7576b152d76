import fc from 'fast-check';
import type { BorderCourse, DoorwaySpec, Job, PatternSpec, SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import type { Wishes } from '../../src/layout/readyFloor.ts';
import { withMovement } from '../../src/packet/withMovement.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { tileOf } from '../pattern/support/tileOf.ts';
import { jobOf, surfaceOf, wallFacts } from './surfaceOf.ts';

const INCH = 8128;
const FOOT = 12 * INCH;

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: (least * 16) / INCH, max: (most * 16) / INCH }).map((parts) => (parts * INCH) / 16);

type Corners = readonly (readonly [number, number])[];

/** Shapes from width and height all over, what is cut out, and by how much corners stand off. */
const SHAPES: Readonly<
  Record<string, (w: number, h: number, a: number, b: number, lean: number) => Corners>
> = {
  rectangle: (w, h) => [[0, 0], [w, 0], [w, h], [0, h]], // biome-ignore format: corners on a line
  leaning: (w, h, _a, _b, lean) => [[0, 0], [w, 0], [w + lean, h - lean], [-lean, h + lean]], // biome-ignore format: corners on a line
  'round a corner': (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h - b], [w - a, h], [0, h]], // biome-ignore format: corners on a line
};

const course = fc.record({
  length: sixteenths(7 * INCH, 24 * INCH),
  width: sixteenths(2 * INCH, 6 * INCH),
  share: fc.constantFrom(1, 1, 0.7),
  corners: fc.constantFrom<Pick<BorderCourse, 'corners' | 'through'>>(
    { corners: 'mitred' },
    { corners: 'butted', through: 'right' },
    { corners: 'butted', through: 'left' },
  ),
});

/** A floor of several bays with a border of one or two courses. */
export const longBorderedRoom = fc.record({
  shape: fc.constantFrom(...Object.keys(SHAPES)),
  width: sixteenths(22 * FOOT, 40 * FOOT),
  height: sixteenths(9 * FOOT, 20 * FOOT),
  cutOut: fc.tuple(sixteenths(5 * FOOT, 9 * FOOT), sixteenths(3 * FOOT, 5 * FOOT)),
  lean: sixteenths(0, 3 * INCH),
  tile: fc.tuple(sixteenths(11 * INCH, 24 * INCH), sixteenths(11 * INCH, 24 * INCH)),
  joint: fc.constantFrom(INCH / 8, (3 * INCH) / 16, INCH / 4),
  exposure: fc.constantFrom('wet', 'sun', 'outside' as const),
  pattern: fc.constantFrom<Partial<PatternSpec>>({}, {}, { along: 'B-C' }, { turnedDeg: 45 }),
  courses: fc.array(course, { minLength: 1, maxLength: 2 }),
  /** Whether the border's tile is as long as that of the field, so that their joints may line up. */
  asLong: fc.boolean(),
  doorway: fc.option(sixteenths(2 * FOOT, 14 * FOOT)),
});

export type LongBorderedRoom = typeof longBorderedRoom extends fc.Arbitrary<infer T> ? T : never;

/** Its job and surface. */
export function longRoomOf(room: LongBorderedRoom): { readonly job: Job; readonly surface: SurfaceSpec } {
  const { shape, width, height, cutOut, lean, tile, joint, exposure, pattern, asLong, doorway } = room;
  const lengths = room.courses.map(({ length }) => (asLong ? tile[0] : length));
  const bands = room.courses.map((one, i) =>
    tileOf(`band${i}`, lengths[i]!, Math.min(one.width, lengths[i]!)),
  );
  const border = room.courses.map(({ share, corners }, i): BorderCourse => {
    return { tile: `band${i}`, width: Math.round(bands[i]!.width * share), ...corners };
  });
  const plain = jobOf(...tile, joint);
  const surface = surfaceOf(SHAPES[shape]!(width, height, ...cutOut, lean), {
    pattern,
    doorways: doorway ? [doorwayAt(doorway)] : [],
    over: { exposure, border },
  });
  const base = { heated: false } as Job['base'];
  const job = { ...plain, tiles: [...plain.tiles, ...bands], base } as unknown as Job;
  return { job, surface };
}

function doorwayAt(from: number): DoorwaySpec {
  const side = { kind: 'plain', facts: wallFacts({ meets: 'jamb' }) } as const;
  return {
    name: 'hall',
    wall: 'A-B',
    fromCorner: 'A',
    from,
    clear: 30 * INCH,
    wallThickness: 10 * INCH,
    doorLine: 5 * INCH,
    left: side,
    right: side,
    beyond: 'wood',
    line: wallFacts({ meets: 'doorway', gap: 1524, gapMax: 2032, touch: false }),
    onlyExit: true,
  };
}

/** The floor laid with its soft joints. */
export function laidThrough(job: Job, surface: SurfaceSpec): Layout {
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  const lay = (wishes: Wishes = {}) => {
    const layout = makeLayout(job, surface, made.room, wishes);
    if ('problems' in layout) throw new Error(JSON.stringify(layout.problems));
    return layout;
  };
  return withMovement(job, surface, { cracks: [], hollow: [], joints: [], readings: [] }, lay(), lay);
}
