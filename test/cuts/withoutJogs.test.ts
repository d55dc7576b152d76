import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { describePiece } from '../../src/cuts/describePiece.ts';
import { isHard } from '../../src/cuts/isHard.ts';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import {
  distancePointSegment,
  type Point,
  type Ring,
  shapeArea,
  subtract,
} from '../../src/geometry/index.ts';
import { demos } from '../sheets/demos.ts';
import { layOut } from '../support/layOut.ts';
import { familyRoom } from '../tiles/support/familyRoom.ts';
import { judgeEdges } from './support/judgeEdges.ts';

const MM = 320;
const box = { length: 300 * MM, width: 300 * MM };
const described = (points: readonly Point[], looseMm: number) => {
  const outer = points.map(([x, y]): Point => [Math.round(x * MM), Math.round(y * MM)]);
  const loose = Math.round(looseMm * MM);
  return { outer, ...describePiece({ box, shape: { outer, holes: [] }, circles: [], loose }, MM) };
};
const sizesOf = ({ sizes }: ReturnType<typeof described>) =>
  sizes.map(({ what, from, saw }) => `${what} ${saw / MM} from ${from}`).sort();

// A corner cut at 45° whose wall steps back by a mark where it meets the joint, as beside a door jamb.
const beside: readonly Point[] = [[0, 0], [300, 0], [300, 300], [123.5, 300], [124.4, 299.1], [0, 174.7]]; // biome-ignore format: a ring
// A wall that steps forth by a mark in the middle of a tile.
const stepped: readonly Point[] = [[0, 0], [200, 0], [200, 150], [199.2, 150], [199.2, 300], [0, 300]]; // biome-ignore format: a ring
const mirrored = (ring: readonly Point[]) => ring.map(([x, y]): Point => [300 - x, y]).reverse();

describe('a jog of no more than a mark', () => {
  test('is sawn straight where the gaps have what that takes off to spare', () => {
    // The line drawn on meets the upper side at 125.3: 300 less that is 174.7 mm, by hand.
    expect(described(beside, 1.5).kind).toBe('point');
    expect(sizesOf(described(beside, 1.5))).toEqual([
      'leftLength 174 from bottom',
      'topLength 174 from right',
    ]);
    expect(sizesOf(described(stepped, 1))).toEqual(['length 199 from left']);
  });

  test('is one in either direction', () => {
    expect(described(mirrored(beside), 1.5).kind).toBe('point');
    expect(described(mirrored(stepped), 1).kind).toBe('rip');
    expect(described(stepped.map(([x, y]): Point => [y, x]).reverse(), 1).kind).toBe('rip');
  });

  test('stays where a gap has less to spare, and where nobody tells', () => {
    for (const loose of [0, 1.1]) expect(described(beside, loose).kind).toBe('odd');
    for (const loose of [0, 0.7]) expect(described(stepped, loose).kind).not.toBe('rip');
  });

  test('stays where it is larger than a mark, whatever the gaps have to spare', () => {
    const larger = stepped.map(([x, y]): Point => [x === 199.2 ? 198.8 : x, y]);
    expect(described(larger, 9).kind).not.toBe('rip');
  });
});

/** Corners of `lost` that lie farther from a ring than a distance. */
const farther = (lost: readonly Ring[], ring: Ring, most: number) =>
  lost.flat().filter((point) => {
    const off = ring.map((a, i) => distancePointSegment(point, a, ring[(i + 1) % ring.length]!));
    return Math.min(...off) > most;
  });

/** What a piece gains or loses by more than it may: its edges, taken as a ring, against its shape. */
function judge(
  outer: Ring,
  edges: readonly { readonly from: Point }[],
  loose: number,
  bend: number,
): string[] {
  const sawn = { outer: edges.map(({ from }) => from), holes: [] };
  const shape = { outer, holes: [] };
  const around = outer.reduce((sum, [x, y], i) => {
    const [u, v] = outer[(i + 1) % outer.length]!;
    return sum + Math.hypot(x - u, y - v);
  }, 0);
  const gained = subtract([sawn], [shape]).reduce((sum, one) => sum + shapeArea(one), 0);
  const lost = subtract([shape], [sawn]).map((one) => one.outer);
  return [
    ...(gained > bend * around ? [`gains ${gained}`] : []),
    ...farther(lost, sawn.outer, Math.max(loose, bend) + 2).map((point) => `loses ${point}`),
  ];
}

describe('what is sawn straight', () => {
  test('only loses, and no more than the gaps have to spare, on random steps along a wall', () => {
    const mm = (least: number, most: number) =>
      fc.integer({ min: least * 100, max: most * 100 }).map((n) => n / 100);
    fc.assert(
      fc.property(mm(20, 280), mm(20, 280), mm(-3, 3), mm(-3, 3), mm(0, 4), (x, y, jogX, jogY, loose) => {
        const found = described([[0, 0], [x, 0], [x + jogX / 3, y], [x + jogX, y + jogY / 4], [x + jogX, 300], [0, 300]], loose); // biome-ignore format: a ring
        expect(judge(found.outer, found.edges, loose * MM, MM / 4)).toEqual([]);
      }),
      { seed: 20270812, numRuns: 300 },
    );
  });

  test.each(demos)('and in $slug', ({ packet }) => {
    for (const { cuts, pieces, edges } of packet.surfaces)
      for (const cut of cuts) {
        const isRound =
          cut.circles.length > 0 || cut.edges.some(({ via }) => via) || cut.shape.holes.length > 0;
        if (isRound) continue;
        const [first] = pieces.filter(({ id }) => id === cut.pieces[0]);
        const spare = first!.edges
          .map((id) => edges.find((edge) => edge.id === id))
          .map((edge) => (edge ? edge.gapMax - edge.gap : 0));
        const { step } = packet.rounding;
        expect(
          judge(cut.shape.outer, cut.edges, Math.min(...spare), step / 4 + 4),
          `cut ${cut.number}`,
        ).toEqual([]);
      }
  });
});

test('the tile of almond-hall beside the door jamb, whose wall steps back by 0.9 mm, is a plain cut', () => {
  const [surface] = demos.find(({ slug }) => slug === 'almond-hall')!.packet.surfaces;
  const cut = surface!.cuts.find(({ pieces }) => pieces.includes('K1-4'))!;
  expect(isHard(cut)).toBe(false);
  expect(cut.sizes).toHaveLength(2);
});

// Along the plank's long side the wall steps forth by less than a thirtieth of an inch: the slant drawn on would meet that side ten inches on, at a joint.
test('no strip is sawn off a side that lies at a joint', () => {
  const { job, surface } = familyRoom('third plank', 219);
  const { layout } = layOut(job, surface);
  expect(judgeEdges(layout, makeCuts(job, layout))).toEqual([]);
});
