import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Layout } from '../../src/layout/Layout.ts';
import { borderedRoom } from '../support/borderedRoom.ts';
import { layoutOf } from '../support/coverTheField.ts';
import { cutsClose } from '../support/cutsClose.ts';
import { areaOf, fieldOf, judged, lengthRound } from '../support/Judged.ts';
import { judgeBorder } from '../support/judgeBorder.ts';
import { judgeCount } from '../support/judgeCount.ts';
import { judgeCover } from '../support/judgeCover.ts';
import { judgeDistance } from '../support/judgeDistance.ts';
import { layOut } from '../support/layOut.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

/**
 * The pieces of a border wall by wall, whichever way it is walked, from its first letter on: area, length round it, and how near it comes to
 * the end of the border's inner edge at the corner whose letter comes first.
 */
function bordersIn({ pieces, border: made }: Layout) {
  const ends = made!.lines.map(({ edge, from, to }) => [edge, edge[0]! < edge.at(-1)! ? from : to] as const);
  return pieces
    .flatMap(({ border, shape }) => {
      if (!border) return [];
      const [, [x, y]] = ends.find(([edge]) => edge === border.wall)!;
      const of = `${[...border.wall].sort().join('')} ${border.course}`;
      const off = Math.min(...shape.outer.map((point) => Math.hypot(point[0] - x, point[1] - y)));
      return [{ of, off, area: areaOf(shape), round: lengthRound(shape.outer) }];
    })
    .sort((a, b) => a.of.localeCompare(b.of) || a.off - b.off);
}

/** Rooms with a border: 20 in `npm test`, 400 in the long run; a fifth of them looked at in every way. */
const ALL = 400;
const ROOMS = process.env.LONG === '1' ? ALL : 20;
/** Looked at every time: whole tiles fill a wall of it to within rounding. */
const KNOWN = [81];

describe('random rooms with a border', () => {
  const named = fc
    .sample(borderedRoom, { seed: 20270701, numRuns: ALL })
    .map((room, i) => [`${i} ${room.kind}`, room] as const)
    .filter((_, i) => i < ROOMS || KNOWN.includes(i));
  const some = named.filter((_, i) => i < Math.max(4, ROOMS / 5) || i >= ROOMS || KNOWN.includes(i));
  const butted = named.filter(([, { surface }]) =>
    surface.border!.some(({ corners }) => corners === 'butted'),
  );

  test.each(named)('%s: no joint is wider than it should be and no piece lies outside', (_, room) => {
    expect(judgeBorder(layoutOf(room))).toEqual([]);
  });

  test.each(named)('%s: no two pieces lie nearer than the joint', (_, room) => {
    expect(judgeDistance(judged(layoutOf(room)))).toEqual([]);
  });

  test.each(some)(
    '%s: its field is covered as any other, and a flood fill finds the same pieces',
    (_, room) => {
      const field = fieldOf(layoutOf(room));
      expect([judgeCover(field), judgeCount(field)]).toEqual([[], []]);
    },
  );

  test.each(named)('%s: no two pieces have one name', (_, room) => {
    const ids = layoutOf(room).pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  cutsClose(named);

  test.each([...new Set([...some, ...butted.slice(0, Math.max(4, ROOMS / 5))])])(
    '%s: looked at from another corner its border has the same pieces',
    (_, { job, surface }) => {
      const own = bordersIn(layOut(job, surface).layout);
      for (const other of [renumbered(surface, 1), mirrored(surface, 0)]) {
        const found = bordersIn(layOut(job, other).layout);
        expect(found.map(({ of }) => of)).toEqual(own.map(({ of }) => of));
        found.forEach(({ off, area, round }, i) => {
          expect(Math.abs(area - own[i]!.area)).toBeLessThan(3 * round);
          expect(Math.abs(off - own[i]!.off)).toBeLessThan(12);
        });
      }
    },
  );

  test('in fewer than one of ten is a joint round the field wider than the others', () => {
    const wide = named.filter(([, room]) => layoutOf(room).faults.some(({ code }) => code === 'borderJoint'));
    expect(wide.length).toBeLessThanOrEqual(ROOMS / 10);
  });
});
