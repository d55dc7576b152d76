import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StartWish, SurfaceSpec } from '../../src/job/Job.ts';
import { readJob } from '../../src/job/readJob.ts';
import { startWish } from '../../src/job/values/startWish.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { startToKeep } from '../../src/sheets/startToKeep.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, surfaceOf, ticks } from '../support/surfaceOf.ts';

const job = jobOf(ticks('11 13/16 in'), ticks('5 7/8 in'), ticks('3/16 in'));

/** A room of four walls, each diagonal read, a little out of square. */
function roomOf(lean: number, start: SurfaceSpec['start'], pattern: Partial<SurfaceSpec['pattern']>) {
  const corners = [
    [0, 0],
    [ticks('124 in'), 0],
    [ticks('124 in') + lean, ticks('98 in')],
    [lean, ticks('98 in')],
  ] as const;
  const surface = surfaceOf(corners, { start, pattern });
  const other = Math.hypot(corners[3][0] - corners[1][0], corners[3][1] - corners[1][1]);
  const crossed = { id: 'B-D', from: 'B', to: 'D', readings: [Math.round(other)] };
  const diagonals = surface.diagonals.filter(({ id }) => id === 'A-C');
  const across = Math.round(Math.hypot(...corners[2]));
  const first = { id: 'A-C', from: 'A', to: 'C', readings: [across] };
  return { ...surface, diagonals: [...(diagonals.length > 0 ? diagonals : [first]), crossed] };
}

/** The same room with one reading corrected. */
function corrected(surface: SurfaceSpec, which: number, by: number): SurfaceSpec {
  const change = <T extends { readonly readings: readonly number[] }>(
    list: readonly T[],
    index: number,
  ): T[] =>
    list.map((one, i) => (i === index ? { ...one, readings: one.readings.map((read) => read + by) } : one));
  return which < 4
    ? { ...surface, walls: change(surface.walls, which) }
    : { ...surface, diagonals: change(surface.diagonals, which - 4) };
}

/** Pairs of names of a tile before and after: a tile is the same where it has moved by less than a correction can move it. */
function sameTiles(before: Layout, after: Layout): [string, string][] {
  const own = ({ pieces }: Layout) => pieces.filter(({ id }) => !/[b-e]$/.test(id));
  return own(before).flatMap(({ id, fullTile: [from] }) => {
    const near = own(after).find(({ fullTile: [to] }) =>
      [0, 1].every((axis) => Math.abs(to![axis]! - from![axis]!) < ticks('2 in')),
    );
    return near ? [[id, near.id] as [string, string]] : [];
  });
}

const starts: [string, SurfaceSpec['start']][] = [
  ['tile on a wall', wishes({ kind: 'tile', on: 'D-A' }, { kind: 'tile', on: 'A-B' })],
  ['joint on a wall', wishes({ kind: 'joint', on: 'D-A' }, { kind: 'joint', on: 'A-B' })],
  [
    'a joint in the middle',
    wishes(
      { kind: 'centred', between: ['D-A', 'B-C'], what: 'joint' },
      { kind: 'centred', between: ['A-B', 'C-D'], what: 'tile' },
    ),
  ],
  [
    'a cut at a wall',
    wishes({ kind: 'cut', size: ticks('8 in'), at: 'D-A' }, { kind: 'cut', size: ticks('4 in'), at: 'A-B' }),
  ],
];

function wishes(along: StartWish, across: StartWish): SurfaceSpec['start'] {
  return { along, across };
}

const half = ticks('1/2 in');
const question = fc.record({
  lean: fc.integer({ min: -2 * half, max: 2 * half }),
  which: fc.integer({ min: 0, max: 5 }),
  by: fc.integer({ min: -half, max: half }),
  running: fc.boolean(),
});

describe('a reading corrected by up to half an inch', () => {
  test.each(starts)('leaves every tile that stays in its place its name: %s', (_, start) => {
    fc.assert(
      fc.property(question, ({ lean, which, by, running }) => {
        const before = roomOf(
          lean,
          start,
          running ? { name: 'running' as const, offset: { numerator: 1, denominator: 2 } } : {},
        );
        const [old, now] = [before, corrected(before, which, by)].map((room) => layOut(job, room).layout);
        const pairs = sameTiles(old!, now!);
        expect(pairs.length).toBeGreaterThan(old!.pieces.length / 2);
        expect(pairs.filter(([was, is]) => was !== is)).toEqual([]);
      }),
      { seed: 31, numRuns: 12 },
    );
  });
});

const file = (wall: string, letter: string, start = 'best') => `
title: Corrected
revision: {letter: ${letter}, date: 2027-03-01}
tile: {field: {read: 11 13/16 in x 11 13/16 in}}
joint: 3/16 in
floor:
  walls: {A-B: ${wall}, B-C: 98 in, C-D: 124 in, D-A: 98 in}
  start: {along: ${start}}
`;

function packetOf(text: string) {
  const { job } = readJob(text, 'jobs/a/job.yaml', 'a');
  const made = makePacket(job!);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.packet;
}

describe('a packet made again', () => {
  const before = packetOf(file('124 in', 'A'));

  test('bears another revision and another stamp', () => {
    const { job } = packetOf(file('124 3/16 in', 'B'));
    expect(job.revision).toBe('B');
    expect(job.stamp).not.toBe(before.job.stamp);
  });

  test('bears another stamp even where the letter was forgotten', () => {
    expect(packetOf(file('124 3/16 in', 'A')).job.stamp).not.toBe(before.job.stamp);
  });

  test('keeps its start when that is named as the sheet of starts says', () => {
    const [along] = startToKeep(before.surfaces[0]!).split(', across');
    const named = along!.replace('along: ', '');
    expect(startWish.read(named).ok).toBe(true);
    const again = packetOf(file('124 in', 'A', named));
    expect(again.surfaces[0]!.start.origin).toEqual(before.surfaces[0]!.start.origin);
  });
});
