import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { InlaySpec, Job, PatternSpec, SurfaceSpec } from '../../src/job/Job.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { judgeCuts } from '../cuts/support/judgeCuts.ts';
import { judge, toJsts } from '../geometry/oracle.ts';
import { tileOf } from '../pattern/support/tileOf.ts';
import { fieldOf, judged } from '../support/Judged.ts';
import { judgeCover } from '../support/judgeCover.ts';
import { judgeDistance } from '../support/judgeDistance.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const base = jobOf(ticks('11 7/8 in'), ticks('11 7/8 in'), ticks('1/8 in'));
const job = {
  ...base,
  tiles: [
    ...base.tiles,
    tileOf('plank', ticks('11 7/8 in'), ticks('2 7/8 in')),
    tileOf('line', ticks('11 7/8 in'), ticks('1 7/8 in')),
  ],
};

const rug = (pattern: Partial<PatternSpec>, over: Partial<InlaySpec> = {}): InlaySpec => ({
  name: 'rug',
  along: ticks('48 in'),
  out: ticks('36 in'),
  from: [
    { wall: 'A-B', distance: ticks('24 in') },
    { wall: 'D-A', distance: ticks('30 in') },
  ],
  pattern: { name: 'herringbone', group: 1, tile: 'plank', turnedDeg: 0, along: 'A-B', ...pattern },
  ...over,
});

function room(inlay: InlaySpec, over: Partial<SurfaceSpec> = {}, turnedDeg = 0): SurfaceSpec {
  const pattern = { name: 'straight', tile: 'field', turnedDeg, along: 'A-B' } as const;
  return surfaceOf(rectangle(ticks('10 ft'), ticks('8 ft')), { pattern, over: { ...over, inlays: [inlay] } });
}

const framed = { border: [{ tile: 'line', width: ticks('1 7/8 in'), corners: 'mitred' } as const] };
const floors: readonly (readonly [string, SurfaceSpec])[] = [
  ['in the direction of the field', room(rug({}))],
  ['at 45 degrees to the field', room(rug({ turnedDeg: 45 }))],
  ['square to the wall in a field at 45 degrees', room(rug({}), {}, 45)],
  ['at 45 degrees in a border of its own', room(rug({ turnedDeg: 45 }, framed))],
  [
    'in a floor that has a border too',
    room(rug({ name: 'straight', turnedDeg: 30 }, framed), {
      border: [{ tile: 'plank', width: ticks('2 7/8 in'), corners: 'butted' }],
    }),
  ],
];

/** How far a point stands off the line through two others, on its left. */
function offLine([x, y]: Point, { from, to }: { readonly from: Point; readonly to: Point }) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return (dx * (y - from[1]) - dy * (x - from[0])) / Math.hypot(dx, dy);
}

describe.each(floors)('an inlay %s', (_, surface) => {
  const { layout } = layOut(job, surface);
  const own = layout.pieces.filter(({ border }) => border?.inlay);

  test('covers its rectangle with pieces and joints of one width, and nothing outside', () => {
    const ring = toJsts([{ outer: layout.inlays![0]!.ring, holes: [] }]);
    const grown = judge.grown(toJsts(own.map(({ shape }) => shape)), job.joint / 2 + 4);
    const open = judge.difference(
      ring,
      judge.union(grown, judge.difference(ring, judge.grown(ring, -job.joint))),
    );
    expect(Math.round(open.getArea())).toBe(0);
    for (const { shape } of own)
      expect(judge.difference(toJsts([shape]), judge.grown(ring, 3)).getArea()).toBe(0);
  });

  test('lies a joint apart from the field, whose pieces go round it', () => {
    expect(judgeDistance(judged(layout))).toEqual([]);
    expect(judgeCover(fieldOf(layout))).toEqual([]);
  });

  const { ring, chalk } = layout.inlays![0]!;
  const field = own.filter(({ border }) => border!.course === 0);
  const sides = ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }));

  test('has lines of its own, marked along its sides from the ends that the walls tell', () => {
    // A side by a wall is the nearest of the four to it, one away from it the farthest: as a setter would see it.
    const off = (point: Point, wall: string) =>
      offLine(point, layout.frame.edges.find(({ name }) => name === wall)!);
    const middle = ({ from, to }: (typeof sides)[0]): Point => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    for (const { from, to, marks } of chalk!.lines) {
      expect(marks.length).toBe(2);
      for (const [i, { wall, far, end, distance }] of marks.entries()) {
        const inOrder = [...sides].sort((a, b) => off(middle(a), wall) - off(middle(b), wall));
        const side = inOrder.at(far ? -1 : 0)!;
        const [zero, other] = [side.from, side.to].sort((a, b) => off(a, end) - off(b, end)) as [
          Point,
          Point,
        ];
        const part = distance / Math.hypot(other[0] - zero[0], other[1] - zero[1]);
        const at = [zero[0] + part * (other[0] - zero[0]), zero[1] + part * (other[1] - zero[1])] as const;
        const [x, y] = [from, to][i]!;
        expect(Math.hypot(x - at[0], y - at[1])).toBeLessThan(3);
      }
    }
  });

  test('has lines on joints of its pattern, or a corner of a tile on the one along the zigzag', () => {
    const [upright, level, zigzag] = chalk!.lines;
    if (!zigzag) {
      for (const line of [upright!, level!])
        for (const { shape } of field) {
          const offs = shape.outer.map((point) => offLine(point, line));
          expect(Math.max(Math.min(...offs), -Math.max(...offs))).toBeGreaterThan(job.joint / 2 - 3);
        }
      return;
    }
    const like = field.find(({ id }) => id === chalk!.zigzag!.like)!;
    const alike = field.filter(
      ({ quarter, slantDeg }) => quarter === like.quarter && slantDeg === like.slantDeg,
    );
    const isOn = (point: Point) => Math.abs(offLine(point, zigzag)) < 3;
    const corner = like.fullTile.findIndex(isOn);
    const onLine = alike.map(({ fullTile }) => fullTile[corner]!).filter(isOn);
    expect(onLine.length).toBeGreaterThan(3);
    const square = {
      from: zigzag.from,
      to: [zigzag.from[0] - zigzag.to[1] + zigzag.from[1], zigzag.from[1] + zigzag.to[0] - zigzag.from[0]],
    } as const;
    const along = onLine.map((point) => offLine(point, square)).sort((a, b) => a - b);
    const steps = along.slice(1).map((at, i) => (at - along[i]!) / chalk!.zigzag!.every);
    for (const step of steps) expect(Math.abs(step - Math.round(step))).toBeLessThan(0.001);
  });

  test('has its first tile as far from both lines as is told', () => {
    const first = field.find(({ id }) => id === chalk!.firstPiece)!;
    const [along, across] = chalk!.lines.slice(0, 2).map((line) => {
      return Math.min(...first.fullTile.map((point) => Math.abs(offLine(point, line))));
    });
    expect(Math.abs(along! - chalk!.guide.along)).toBeLessThan(3);
    expect(Math.abs(across! - chalk!.guide.across)).toBeLessThan(3);
  });

  test('has its lines numbered after those of the floor', () => {
    const before = [...layout.chalk.lines, ...(layout.chalk.further ?? [])].length;
    expect(chalk!.lines.map(({ name }) => Number(name))).toEqual(chalk!.lines.map((__, i) => before + i + 1));
  });

  test('has names and cuts of its own', () => {
    const ids = layout.pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(own.some(({ id }) => id === 'R-1')).toBe(true);
    expect(judgeCuts(layout, makeCuts(job as unknown as Job, layout), job.print.step)).toEqual([]);
  });
});

test('an inlay that does not keep a joint from the wall is refused', () => {
  const near = { wall: 'A-B', distance: ticks('1/4 in') };
  const surface = room(rug({}, { from: [near, { wall: 'D-A', distance: ticks('30 in') }] }));
  const made = makeRoom(surface);
  const laid = 'room' in made ? makeLayout(job, surface, made.room) : made;
  expect(laid).toMatchObject({ problems: [{ code: 'inlayOutside', path: ['floor', 'inlays', 'rug'] }] });
});

describe('the lines of an inlay looked at differently', () => {
  const even = { name: 'straight', tile: 'plank' } as const;
  const butted = { border: [{ tile: 'line', width: ticks('1 7/8 in'), corners: 'butted' } as const] };
  const module = ticks('11 7/8 in') + job.joint;
  const cases: readonly (readonly [string, SurfaceSpec])[] = [
    ['square to its walls', room(rug(even))],
    ['with two joints as far from its middle', room(rug(even, { along: ticks('35 7/8 in') }))],
    ['at 30 degrees in a border of its own', room(rug({ ...even, turnedDeg: 30 }, butted))],
    ['in thirds in a field at 45 degrees', room(rug({ name: 'running', tile: 'plank', offset: { numerator: 1, denominator: 3 } }), {}, 45)],
  ]; // biome-ignore format: a case on a line
  const marksOf = (surface: SurfaceSpec) =>
    layOut(job, surface)
      .layout.inlays![0]!.chalk!.lines.map(({ marks }) =>
        marks.map(({ wall, far, end, distance }) => ({
          side: `${walk(wall)} ${far} ${walk(end)}`,
          distance,
        })),
      )
      .map((marks) => marks.sort((a, b) => a.side.localeCompare(b.side) || a.distance - b.distance));
  /** A wall is named the other way round where it is walked so. */
  const walk = (wall: string) => [...wall].sort().join('');

  test.each(cases)('%s have the same marks', (_, surface) => {
    const own = marksOf(surface);
    for (const other of [renumbered(surface, 1), renumbered(surface, 2), mirrored(surface, module)]) {
      const found = marksOf(other);
      expect(found.map((marks) => marks.map(({ side }) => side))).toEqual(
        own.map((marks) => marks.map(({ side }) => side)),
      );
      for (const [i, marks] of found.entries())
        for (const [k, { distance }] of marks.entries())
          expect(Math.abs(distance - own[i]![k]!.distance)).toBeLessThan(4);
    }
  });
});
