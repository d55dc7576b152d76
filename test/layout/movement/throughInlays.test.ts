import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../../src/cuts/makeCuts.ts';
import type { InlaySpec, Job, PatternSpec, SurfaceSpec } from '../../../src/job/Job.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { judgeCuts } from '../../cuts/support/judgeCuts.ts';
import { judge, toJsts } from '../../geometry/oracle.ts';
import { tileOf } from '../../pattern/support/tileOf.ts';
import { fieldOf, judged } from '../../support/Judged.ts';
import { judgeCover } from '../../support/judgeCover.ts';
import { judgeDistance } from '../../support/judgeDistance.ts';
import { crossedPieces, piecesInside } from '../../support/judgeMovement.ts';
import { laidInBays } from '../../support/laidInBays.ts';
import { jobOf, rectangle, surfaceOf } from '../../support/surfaceOf.ts';

const INCH = 8128;
const FOOT = 12 * INCH;
const JOINT = INCH / 8;

/** Floors: 5 in `npm test`, 60 in the long run. */
const FLOORS = process.env.LONG === '1' ? 60 : 5;

/** An inlay from short to longer than a bay, in a floor of several bays. */
const floor = fc.record({
  along: fc.integer({ min: 3 * 12, max: 16 * 12 }),
  out: fc.integer({ min: 30, max: 60 }),
  off: fc.tuple(fc.integer({ min: 20, max: 60 }), fc.integer({ min: 20, max: 60 })),
  own: fc.constantFrom<Partial<PatternSpec>>({}, { turnedDeg: 45 }, { name: 'herringbone', turnedDeg: 45 }),
  framed: fc.boolean(),
  tile: fc.integer({ min: 11, max: 19 }),
  exposure: fc.constantFrom('sun', 'outside' as const),
});

const floors = fc
  .sample(floor, { seed: 20270803, numRuns: FLOORS })
  .map((one, i) => [`${i} ${one.along} in of ${one.own.name ?? 'straight'}`, one] as const);

function laid({ along, out, off, own, framed, tile, exposure }: (typeof floors)[number][1]) {
  const { tiles, ...plain } = jobOf(tile * INCH, tile * INCH, JOINT);
  const base = { heated: false } as Job['base'];
  const band = tileOf('band', 12 * INCH - JOINT, 4 * INCH - JOINT);
  const job = { ...plain, tiles: [...tiles, band], base } as unknown as Job;
  const from = [{ wall: 'A-B', distance: off[0] * INCH }, { wall: 'D-A', distance: off[1] * INCH }] as const; // biome-ignore format: on a line
  const pattern = { name: 'straight', tile: 'band', turnedDeg: 0, along: 'A-B', ...own } as PatternSpec;
  const frame = { border: [{ tile: 'band', width: band.width, corners: 'mitred' }] } as const;
  const inlay: InlaySpec = {
    name: 'rug',
    along: along * INCH,
    out: out * INCH,
    from,
    pattern,
    ...(framed && frame),
  };
  const surface: SurfaceSpec = surfaceOf(rectangle(24 * FOOT, 12 * FOOT), {
    over: { exposure, inlays: [inlay] },
  });
  return { job, layout: laidInBays(job, surface) };
}

const known = new Map<string, { job: Job; layout: Layout }>(floors.map(([name, one]) => [name, laid(one)]));

describe('soft joints through an inlay', () => {
  test.each(floors)('%s: no piece reaches into one', (name) => {
    const { pieces, turn, movement } = known.get(name)!.layout;
    expect(movement!.lines.length).toBeGreaterThan(0);
    expect(crossedPieces({ pieces, turn, movement: movement! })).toEqual([]);
    expect(piecesInside({ pieces, turn, movement: movement! })).toEqual([]);
  });

  test.each(floors)('%s: nothing of the inlay is without tile or a joint', (name) => {
    const { inlays, pieces, left, pattern, movement } = known.get(name)!.layout;
    const reach = pattern.joint / 2 + 4;
    const strips = movement!.lines.flatMap(({ parts, axis, width }) =>
      parts.map(({ from: [x, y], to: [u, v] }) => {
        const [dx, dy] = axis === 'along' ? [width / 2 + 3, 0] : [0, width / 2 + 3];
        const outer = [[x - dx, y - dy], [u + dx, y - dy], [u + dx, v + dy], [x - dx, v + dy]] as const; // biome-ignore format: on a line
        return toJsts([{ outer, holes: [] }]);
      }),
    );
    const covered = [
      judge.grown(toJsts(pieces.map(({ shape }) => shape)), reach),
      ...left.map(({ shape }) => judge.grown(toJsts([shape]), 2 * reach)),
      ...strips,
    ];
    const open = covered.reduce(
      (rest, one) => judge.difference(rest, one),
      toJsts([{ outer: inlays![0]!.ring, holes: [] }]),
    );
    const parts = Array.from({ length: open.getNumGeometries() }, (_, i) => open.getGeometryN(i).getArea());
    // Where joints cross the grown pieces leave a speck.
    expect(parts.filter((area) => area > pattern.joint ** 2)).toEqual([]);
  });

  test.each(floors)(
    '%s: no two pieces lie nearer than the joint, none have one name, every cut is its piece',
    (name) => {
      const { job, layout } = known.get(name)!;
      expect(judgeDistance(judged(layout))).toEqual([]);
      expect(judgeCover(fieldOf(layout))).toEqual([]);
      const ids = layout.pieces.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(judgeCuts(layout, makeCuts(job, layout), job.print.step)).toEqual([]);
    },
  );
});
