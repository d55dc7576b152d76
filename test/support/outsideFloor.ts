import fc from 'fast-check';
import type { Job, ObstacleSpec, PatternSpec, StartWish, SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import type { Wishes } from '../../src/layout/readyFloor.ts';
import { withMovement } from '../../src/packet/withMovement.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
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
  clipped: (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h], [0, h]], // biome-ignore format: corners on a line
  'round a corner': (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h - b], [w - a, h], [0, h]], // biome-ignore format: corners on a line
};

/** A floor outside from one bay to several: its shape, what stands in it, what moves under it, its tile, and where it starts. */
export const outsideFloor = fc.record({
  shape: fc.constantFrom(...Object.keys(SHAPES)),
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
export function laidOutside(floor: OutsideFloor): { readonly layout: Layout; readonly job: Job } {
  const surface = surfaceFrom(floor);
  const job = { ...jobOf(...floor.tile, floor.joint), base: { heated: false } } as Job;
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  const lay = (wishes: Wishes = {}) => {
    const layout = makeLayout(job, surface, made.room, wishes);
    if ('problems' in layout) throw new Error(JSON.stringify(layout.problems));
    return layout;
  };
  const { baseJoint: at, height } = floor;
  const joints = at ? [{ wall: 'D-A', distance: at, from: [at, 0], to: [at, height] } as const] : [];
  const base = { cracks: [], hollow: [], joints, readings: [] };
  return { job, layout: withMovement(job, surface, base, lay(), lay) };
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
  return surfaceOf(SHAPES[shape]!(width, height, ...cutOut, lean), {
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
