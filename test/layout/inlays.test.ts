import { describe, expect, test } from 'vitest';
import { makeCuts } from '../../src/cuts/makeCuts.ts';
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
