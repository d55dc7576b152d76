import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../../src/cuts/makeCuts.ts';
import type { Job, SurfaceSpec } from '../../../src/job/Job.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { judgeCuts } from '../../cuts/support/judgeCuts.ts';
import { areaOf, fieldOf, judged, lengthRound } from '../../support/Judged.ts';
import { judgeBorder } from '../../support/judgeBorder.ts';
import { judgeCover } from '../../support/judgeCover.ts';
import { judgeDistance } from '../../support/judgeDistance.ts';
import { bayFaults, crossedPieces, piecesInside } from '../../support/judgeMovement.ts';
import { laidInBays } from '../../support/laidInBays.ts';
import { longBorderedRoom, longRoomOf } from '../../support/longBorderedRoom.ts';
import { mirrored, renumbered } from '../../support/transformSurface.ts';

/** Floors: 12 in `npm test`, 300 in the long run. */
const FLOORS = process.env.LONG === '1' ? Number(process.env.N ?? 300) : 12;

const floors = fc
  .sample(longBorderedRoom, { seed: 20270802, numRuns: FLOORS })
  .map((room, i) => [`${i} ${room.shape} ${room.exposure} ${room.pattern.turnedDeg ?? 0}°`, room] as const);
const known = new Map<string, { job: Job; surface: SurfaceSpec; layout: Layout }>(
  floors.map(([name, room]) => {
    const { job, surface } = longRoomOf(room);
    return [name, { job, surface, layout: laidInBays(job, surface) }];
  }),
);
const layoutOf = (name: string): Layout => known.get(name)!.layout;

describe('soft joints through a border', () => {
  test('run through most of these floors, and are laid as wide as they are told where the pattern lies along the walls', () => {
    const parted = floors.filter(([name]) => layoutOf(name).movement?.lines.length);
    expect(parted.length).toBeGreaterThan(FLOORS / 2);
    const straight = parted.filter(([, { pattern }]) => !pattern.turnedDeg);
    const told = straight.filter(([name]) => !layoutOf(name).movement!.laid);
    expect(told.length).toBeLessThanOrEqual(FLOORS / 50);
  });

  test.each(floors)('%s: no piece of border, doorway or field reaches into one', (name) => {
    const { pieces, turn, movement } = layoutOf(name);
    if (!movement) return;
    expect(crossedPieces({ pieces, turn, movement })).toEqual([]);
    const own = movement.laid ? pieces : pieces.filter(({ border }) => border);
    expect(piecesInside({ pieces: own, turn, movement })).toEqual([]);
    if (movement.missing.length === 0) expect(bayFaults({ pieces, turn, movement })).toEqual([]);
  });

  test.each(floors)('%s: no joint of the border is wider than it should be', (name) => {
    expect(judgeBorder(layoutOf(name))).toEqual([]);
  });

  test.each(floors)('%s: no two pieces lie nearer than the joint between them', (name) => {
    expect(judgeDistance(judged(layoutOf(name)))).toEqual([]);
  });

  test.each(floors)('%s: the field inside is covered as any other', (name) => {
    expect(judgeCover(fieldOf(layoutOf(name)))).toEqual([]);
  });

  test.each(floors)('%s: no two pieces have one name, and every cut is its piece', (name) => {
    const { job, layout } = known.get(name)!;
    const ids = layout.pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(judgeCuts(layout, makeCuts(job, layout), job.print.step)).toEqual([]);
  });

  test.each(floors)('%s: none runs along a course', (name) => {
    for (const { border, axis, at } of linesBeside(layoutOf(name)))
      expect(Math.max(at - border.high, border.low - at), `${axis} ${at}`).toBeGreaterThan(0);
  });

  test('looked at from another corner or in a mirror the border has the same pieces where its soft joints are the same', () => {
    let same = 0;
    const some = floors.slice(0, Math.max(8, FLOORS / 5));
    for (const [name] of some) {
      const { job, surface, layout } = known.get(name)!;
      for (const other of [renumbered(surface, 1), mirrored(surface, 0)]) {
        const seen = laidInBays(job, other);
        if (!isNear(linesOf(seen), linesOf(layout), 6)) continue;
        same++;
        const [found, own] = [areasOf(seen), areasOf(layout)];
        expect(found.map(({ of }) => of)).toEqual(own.map(({ of }) => of));
        found.forEach(({ area, round }, i) => {
          expect(Math.abs(area - own[i]!.area), name).toBeLessThan(3 * round);
        });
      }
    }
    expect(same).toBeGreaterThan(some.length);
  });
});

/** Each soft joint with each course band that runs its way. */
function linesBeside({ movement, border }: Layout) {
  return (movement?.lines ?? []).flatMap(({ axis, at }) =>
    border!.lines.flatMap(({ from, to, off }) => {
      const on = axis === 'along' ? 0 : 1;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const along = [(to[0] - from[0]) / length, (to[1] - from[1]) / length] as const;
      if (Math.abs(along[on]) > 0.3) return [];
      const out = on === 0 ? along[1] * off : -along[0] * off;
      const places = [from[on], to[on], from[on] + out, to[on] + out];
      return [{ axis, at, border: { low: Math.min(...places), high: Math.max(...places) } }];
    }),
  );
}

/** How far each soft joint lies from the border's corners by their letters, whichever way the room is looked at. */
function linesOf({ movement, border }: Layout): readonly number[] {
  const corners = border!.lines
    .flatMap(({ edge, from, to }) => [[edge[0]!, from] as const, [edge.at(-1)!, to] as const])
    .sort(([a], [b]) => a.localeCompare(b));
  return (movement?.lines ?? [])
    .map(({ axis, at }) => corners.map(([, point]) => Math.abs(point[axis === 'along' ? 0 : 1] - at)))
    .sort((a, b) => a[0]! - b[0]! || a[2]! - b[2]!)
    .flat();
}

function isNear(one: readonly number[], other: readonly number[], off: number): boolean {
  return one.length === other.length && one.every((at, i) => Math.abs(at - other[i]!) <= off);
}

/** Pieces of the border by wall, course and area. */
function areasOf({ pieces }: Layout) {
  return pieces
    .flatMap(({ border, shape }) => {
      if (!border) return [];
      const of = `${[...border.wall].sort().join('')} ${border.course}`;
      return [{ of, area: areaOf(shape), round: lengthRound(shape.outer) }];
    })
    .sort((a, b) => a.of.localeCompare(b.of) || a.area - b.area);
}
