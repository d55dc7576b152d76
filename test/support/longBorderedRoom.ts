import fc from 'fast-check';
import type { BorderCourse, DoorwaySpec, Job, PatternSpec, SurfaceSpec } from '../../src/job/Job.ts';
import { tileOf } from '../pattern/support/tileOf.ts';
import { FLOOR_SHAPES, sixteenths } from './floorShapes.ts';
import { jobOf, surfaceOf, wallFacts } from './surfaceOf.ts';

const INCH = 8128;
const FOOT = 12 * INCH;

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
  shape: fc.constantFrom('rectangle', 'leaning', 'round a corner'),
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
  const surface = surfaceOf(FLOOR_SHAPES[shape]!(width, height, ...cutOut, lean), {
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
