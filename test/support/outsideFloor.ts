import fc from 'fast-check';
import type { Job, ObstacleSpec, PatternSpec, StartWish, SurfaceSpec } from '../../src/job/Job.ts';
import { FLOOR_SHAPES, sixteenths } from './floorShapes.ts';
import { laidInBays } from './laidInBays.ts';
import { jobOf, surfaceOf, wallFacts } from './surfaceOf.ts';

const INCH = 8128;
const FOOT = 12 * INCH;

/** A floor outside from one bay to several: its shape, what stands in it, what moves under it, its tile, and where it starts. */
export const outsideFloor = fc.record({
  shape: fc.constantFrom(...Object.keys(FLOOR_SHAPES)),
  width: sixteenths(15 * FOOT, 40 * FOOT),
  height: sixteenths(8 * FOOT, 26 * FOOT),
  cutOut: fc.tuple(sixteenths(4 * FOOT, 7 * FOOT), sixteenths(2 * FOOT, 5 * FOOT)),
  lean: sixteenths(0, 5 * INCH),
  tile: fc.tuple(sixteenths(11 * INCH, 30 * INCH), sixteenths(11 * INCH, 24 * INCH)),
  joint: fc.constantFrom(INCH / 8, (3 * INCH) / 16, INCH / 4),
  pattern: fc.constantFrom<Partial<PatternSpec>>(
    {},
    {},
    { along: 'B-C' },
    { name: 'running', offset: { numerator: 1, denominator: 2 }, stepping: 'alternating' },
  ),
  along: fc.constantFrom<StartWish>({ kind: 'best' }, { kind: 'best' }, { kind: 'joint', on: 'A-B' }),
  post: fc.option(fc.tuple(sixteenths(3 * FOOT, 10 * FOOT), sixteenths(3 * FOOT, 5 * FOOT), fc.boolean())),
  baseJoint: fc.option(sixteenths(4 * FOOT, 9 * FOOT)),
});

export type OutsideFloor = typeof outsideFloor extends fc.Arbitrary<infer T> ? T : never;

/** The floor with its soft joints, laid wide where they can be, and the job that its cuts are made by. */
export function laidOutside(floor: OutsideFloor): {
  readonly layout: ReturnType<typeof laidInBays>;
  readonly job: Job;
} {
  const surface = surfaceFrom(floor);
  const job = { ...jobOf(...floor.tile, floor.joint), base: { heated: false } } as Job;
  const { baseJoint: at, height } = floor;
  const joints = at ? [{ wall: 'D-A', distance: at, from: [at, 0], to: [at, height] } as const] : [];
  const base = { cracks: [], hollow: [], joints, readings: [] };
  return { job, layout: laidInBays(job, surface, base) };
}

function surfaceFrom({
  shape,
  width,
  height,
  cutOut,
  lean,
  pattern,
  along,
  post,
}: OutsideFloor): SurfaceSpec {
  return surfaceOf(FLOOR_SHAPES[shape]!(width, height, ...cutOut, lean), {
    pattern,
    start: { along },
    obstacles: post && shape === 'rectangle' ? [standing(...post)] : [],
    over: { exposure: 'outside' },
  });
}

function standing(x: number, y: number, isRound: boolean): ObstacleSpec {
  const from = [{ wall: 'A-B', distance: y }, { wall: 'D-A', distance: x }] as const; // biome-ignore format: on a line
  return {
    ...wallFacts({ meets: 'column' }),
    name: 'post',
    shape: isRound
      ? { kind: 'circle', diameter: 8 * INCH, from }
      : { kind: 'rectangle', along: FOOT, out: 8 * INCH, from },
  };
}
