import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../../src/cuts/makeCuts.ts';
import type { Job, ObstacleSpec, PatternSpec, StartWish, SurfaceSpec } from '../../../src/job/Job.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { makeLayout } from '../../../src/layout/makeLayout.ts';
import { withMovement } from '../../../src/packet/withMovement.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import { judgeCuts } from '../../cuts/support/judgeCuts.ts';
import { judgeRows } from '../../cuts/support/judgeRows.ts';
import { judged } from '../../support/Judged.ts';
import { judgeCover } from '../../support/judgeCover.ts';
import { judgeDistance } from '../../support/judgeDistance.ts';
import { bayFaults, crossedPieces } from '../../support/judgeMovement.ts';
import { jobOf, surfaceOf, wallFacts } from '../../support/surfaceOf.ts';

/** Floors outside: 12 in `npm test`, 400 in the long run. */
const FLOORS = process.env.LONG === '1' ? 400 : 12;
const INCH = 8128;
const MOST_COVERED = 4064;

const inches = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((parts) => (parts * INCH) / 16);

type Corners = readonly (readonly [number, number])[];

/** Shapes from width and height all over, what is cut out, and by how much corners stand off. */
const SHAPES: Readonly<Record<string, (w: number, h: number, a: number, b: number, lean: number) => Corners>> =
  {
    rectangle: (w, h) => [[0, 0], [w, 0], [w, h], [0, h]],
    leaning: (w, h, _a, _b, lean) => [[0, 0], [w, 0], [w + lean, h - lean], [-lean, h + lean]],
    clipped: (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h], [0, h]],
    'round a corner': (w, h, a, b) => [[0, 0], [w, 0], [w, h - b], [w - a, h - b], [w - a, h], [0, h]],
  }; // biome-ignore format: corners on a line

const wishes = fc.constantFrom<StartWish>(
  { kind: 'best' },
  { kind: 'best' },
  { kind: 'best' },
  { kind: 'joint', on: 'A-B' },
  { kind: 'joint', on: 'B-C' },
);

const floors = fc.record({
  shape: fc.constantFrom(...Object.keys(SHAPES)),
  width: inches(15 * 12, 40 * 12),
  height: inches(8 * 12, 26 * 12),
  cutOut: fc.tuple(inches(4 * 12, 7 * 12), inches(2 * 12, 5 * 12)),
  lean: inches(0, 5),
  tile: fc.tuple(inches(11, 30), inches(11, 24)),
  joint: fc.constantFrom(INCH / 8, (3 * INCH) / 16, INCH / 4),
  pattern: fc.constantFrom<Partial<PatternSpec>>(
    {},
    {},
    { along: 'B-C' },
    { name: 'running', offset: { numerator: 1, denominator: 2 }, stepping: 'alternating' },
  ),
  along: wishes,
  column: fc.option(
    fc.record({
      at: fc.tuple(inches(30, 120), inches(30, 60)),
      kind: fc.constantFrom('circle', 'rectangle' as const),
    }),
  ),
  joints: fc.option(inches(40, 90)),
});

type Floor = typeof floors extends fc.Arbitrary<infer T> ? T : never;

function surfaceFrom({ shape, width, height, cutOut, lean, pattern, along, column }: Floor): SurfaceSpec {
  const corners = SHAPES[shape]!(width, height, ...cutOut, lean);
  const post = (at: readonly [number, number], kind: 'circle' | 'rectangle'): ObstacleSpec => {
    const from = [{ wall: 'A-B', distance: at[1] }, { wall: 'D-A', distance: at[0] }] as const; // biome-ignore format: on a line
    return {
      ...wallFacts({ meets: 'column', gapMax: MOST_COVERED }),
      name: 'post',
      shape:
        kind === 'circle'
          ? { kind, diameter: 8 * INCH, from }
          : { kind, along: 12 * INCH, out: 8 * INCH, from },
    };
  };
  const standing = column && shape === 'rectangle' ? [post(column.at, column.kind)] : [];
  return surfaceOf(corners, {
    pattern,
    start: { along },
    obstacles: standing,
    over: { exposure: 'outside' },
  });
}

/** The floor with its soft joints laid. */
function laid(floor: Floor): { layout: Layout; job: Job } {
  const surface = surfaceFrom(floor);
  const job = { ...jobOf(...floor.tile, floor.joint), base: { heated: false } } as Job;
  const made = makeRoom(surface, 'inches');
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  const lay = (wide: Parameters<NonNullable<Parameters<typeof withMovement>[4]>>[0] = []) => {
    const layout = makeLayout(job, surface, made.room, { wide });
    if ('problems' in layout) throw new Error(JSON.stringify(layout.problems));
    return layout;
  };
  const base = { cracks: [], hollow: [], joints: [], readings: [] };
  return { job, layout: withMovement(job, surface, base, lay(), lay) };
}

const drawn = fc.sample(floors, { seed: 20270412, numRuns: FLOORS });
const named = drawn.map((floor, i) => [`${i} ${floor.shape}`, floor] as const);

describe('floors outside whose soft joints are laid wide', () => {
  test.each(named)('%s', (_, floor) => {
    const { layout, job } = laid(floor);
    const { movement, pieces, turn } = layout;
    if (!movement) return;
    console.log(movement.laid, movement.lines.length, movement.lines.map(({ width }) => width / 508).join());
    expect(judgeCover(judged(layout))).toEqual([]);
    expect(judgeDistance(judged(layout))).toEqual([]);
    expect(crossedPieces({ pieces, turn, movement })).toEqual([]);
    if (movement.missing.length === 0) expect(bayFaults({ pieces, turn, movement })).toEqual([]);
    const cuts = makeCuts(job, layout);
    expect(judgeRows(cuts.rows, 'inches')).toEqual([]);
    expect(judgeCuts(layout, cuts, job.print.step)).toEqual([]);
    expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
  });
});
