import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import { bounds, type Point } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { startAsWish } from '../../src/sheets/startAsWish.ts';
import { chance } from '../support/chance.ts';
import { judgeAslant } from '../support/judgeAslant.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';
import { judgePlan } from '../tiles/support/judgePlan.ts';
import { rulesOf } from '../tiles/support/rulesOf.ts';
import { curveRoom, type Look } from './support/curveRoom.ts';

/** Random starts tried in each room, and what the narrowest cut of a start that saves a tile may be wider by, as a share of a tile. */
const TRIED = 8;
const WIDER = 1 / 12;

/** A random room laid at 45°, with a judge of strips that knows nothing of the search. */
function roomOf(seed: number, looked?: Look) {
  const room = curveRoom('diagonal', seed, looked);
  const strips = (origin: Point) => judgeAslant(room.ground, room.layout.pattern, origin, 4).strips;
  return { ...room, strips };
}

const rooms = Array.from({ length: 12 }, (_, seed) => roomOf(seed));

/** The narrowest piece in sight: what it measures along either side of its tile, as a share of that. */
function narrowestOf({ pieces }: Layout): number {
  const shares = pieces
    .filter(({ whole, seen }) => !whole && seen !== 'hidden')
    .map(({ shape, fullTile }) => {
      const [own, full] = [bounds(shape.outer), bounds(fullTile)];
      return Math.min(
        (own.maxX - own.minX) / (full.maxX - full.minX),
        (own.maxY - own.minY) / (full.maxY - full.minY),
      );
    });
  return Math.min(1, ...shares);
}

/** Each start of a room's curve laid anew: as many tiles, a plan that can be sawn, and the narrowest cut that is told. */
function expectLaidAnew(room: (typeof rooms)[number]): void {
  for (const { candidate, tiles, bound } of room.curve) {
    const laid = room.laidAt(candidate.origin);
    const plan = room.plan(laid);
    expect([plan.needed, plan.bound]).toEqual([tiles, bound]);
    expect(judgePlan(laid, makeCuts(room.job, laid), plan, rulesOf(room.job))).toEqual([]);
    expect(candidate.smallestShare).toBeCloseTo(narrowestOf(laid), 6);
  }
}

describe('the curve of narrowest cut against tiles where tile lies at 45° to the walls', () => {
  test('is there in nearly all rooms', () => {
    expect(rooms.filter(({ curve }) => curve.length > 1).length).toBeGreaterThanOrEqual(9);
  });

  test.each(rooms)(
    'room $seed: each start laid anew takes as many tiles and has its narrowest cut',
    expectLaidAnew,
  );

  test.each(rooms)(
    'room $seed: each start but the chosen one takes fewer tiles than all with as wide a cut',
    ({ curve }) => {
      for (const one of curve.slice(1)) {
        const wider = curve.filter(({ candidate }) => candidate.smallestShare > one.candidate.smallestShare);
        for (const other of wider) expect(one.tiles).toBeLessThan(other.tiles);
      }
    },
  );

  test('of a hundred random starts two at most save a tile with a cut as wide, to a twelfth of a tile', () => {
    const beyond = rooms.flatMap(({ seed, curve, layout, laidAt, strips, plan }) => {
      const { below } = chance(seed + 1);
      const origins = Array.from({ length: TRIED }, (): Point => [below(150_000), below(150_000)]);
      return origins.filter((origin) => {
        if (strips(origin) > strips(layout.origin)) return false;
        const laid = laidAt(origin);
        const [tiles, share] = [plan(laid).needed, narrowestOf(laid)];
        return !curve.some((one) => one.tiles <= tiles && one.candidate.smallestShare >= share - WIDER);
      });
    });
    expect(beyond.length).toBeLessThanOrEqual(2);
  });
});

const LOOKS = [
  ['mirrored', (surface: SurfaceSpec) => mirrored(surface, 0)],
  ['measured from another corner', (surface: SurfaceSpec) => renumbered(surface, 1)],
] as const;

describe.each(LOOKS)('the curve of the same rooms %s', (_, looked) => {
  const others = rooms.slice(0, 6).map(({ seed }) => roomOf(seed, looked));

  test.each(others)(
    'room $seed: each start laid anew takes as many tiles and has its narrowest cut',
    expectLaidAnew,
  );

  test('has for each start one of as few tiles with a cut as wide, to a twelfth of a tile', () => {
    const lost = others.flatMap(({ seed, curve }) =>
      rooms[seed]!.curve.slice(1)
        .filter(
          ({ tiles, candidate }) =>
            !curve.some(
              (one) => one.tiles <= tiles && one.candidate.smallestShare >= candidate.smallestShare - WIDER,
            ),
        )
        .map(
          (one) =>
            `${seed}: ${one.tiles} ${one.candidate.smallestShare} of ${curve.map((other) => `${other.tiles} ${other.candidate.smallestShare}`)}`,
        ),
    );
    expect(lost).toEqual([]);
  });
});

/** A room of 10 1/2 by 7 1/2 ft in a pattern, joint 1/8 in. */
function roomIn(pattern: string, tile: string, start = '') {
  const { job } = readJob(
    `title: Room
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: ${tile}}}
joint: 1/8 in
floor:
  walls: {A-B: 125 in, B-C: 90 in, C-D: 125 in, D-A: 90 in}
  pattern: ${pattern}
  ${start}
`,
    'room',
  );
  if (!job) throw new Error('the job file can be read');
  const made = makePacket(job, { curve: true });
  if ('problems' in made) throw new Error('the room can be laid');
  const [surface] = made.packet.surfaces;
  return { packet: made.packet, start: surface!.start, curve: surface!.curve ?? [] };
}

describe.each([
  ['{straight: {turned: 45}}', '12 in x 12 in'],
  ['{running: 1/2, turned: 45}', '12 in x 6 in'],
  ['{straight: {turned: 22}}', '8 in x 8 in'],
])('a start of %s, tile %s, that the curve shows', (pattern, tile) => {
  const { packet, curve } = roomIn(pattern, tile);

  test('is built with as many tiles, to the tick where it is shown, once the job file names it as its line says', () => {
    expect(curve.length).toBeGreaterThan(1);
    for (const { candidate, tiles } of curve.slice(1)) {
      const built = roomIn(pattern, tile, `start: {${startAsWish({ packet }, candidate)}}`);
      expect(built.packet.tiles.field!.needed).toBe(tiles);
      expect(built.start.chosen.smallest).toBe(candidate.smallest);
      expect(built.start.origin).toEqual(candidate.origin);
    }
  });
});

describe.each([
  ['{straight: {turned: 45}}', '12 in x 12 in', 'along: cut of 5 1/2 in at B-C'],
  ['{straight: {turned: 45}}', '12 in x 12 in', 'across: tile on A-B'],
  ['{running: 1/2, turned: 45}', '12 in x 6 in', 'along: cut of 3 in at A-B'],
])('a start of %s, tile %s, held by the file with %s', (pattern, tile, held) => {
  const { packet, curve } = roomIn(pattern, tile, `start: {${held}}`);
  const { start } = packet.spec.surfaces[0]!;

  test('has starts beside it whose lines say again what is held, and are built to the tick where they are shown', () => {
    expect(curve.length).toBeGreaterThan(1);
    for (const { candidate, tiles } of curve.slice(1)) {
      const line = startAsWish({ packet }, candidate, start);
      expect(line).toContain(held);
      const built = roomIn(pattern, tile, `start: {${line}}`);
      expect(built.packet.tiles.field!.needed).toBe(tiles);
      expect(built.start.chosen.smallest).toBe(candidate.smallest);
      expect(built.start.origin).toEqual(candidate.origin);
    }
  });
});
