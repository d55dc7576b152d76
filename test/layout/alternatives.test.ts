import { describe, expect, test } from 'vitest';
import type { ObstacleSpec } from '../../src/job/Job.ts';
import type { Candidate } from '../../src/layout/Layout.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks, wallFacts } from '../support/surfaceOf.ts';

const withReason = (candidates: readonly Candidate[], code: string) =>
  candidates.find(({ reason }) => reason.some((one) => one.code === code))!;

describe('a room of 15 ft 10 in x 14 ft whose cuts are nearly whole (common practice, no source)', () => {
  const surface = surfaceOf(rectangle(ticks('15 ft 10 in'), ticks('14 ft')));
  const { start, faults } = layOut(
    jobOf(ticks('11 13/16 in'), ticks('11 13/16 in'), ticks('3/16 in')),
    surface,
  ).layout;

  test('is trimmed by choice: 12 full and 11 21/32 at each end', () => {
    expect(start.chosen.ends.across).toEqual([ticks('11 21/32 in'), ticks('11 21/32 in')]);
    expect(faults.filter(({ code }) => code === 'nearFull').flatMap(({ pieces }) => pieces)).toHaveLength(32);
  });

  test('may have 13 full and 5 21/32 at each end, which is under half', () => {
    const { ends, underHalf } = withReason(start.alternatives, 'start.withoutTrim');
    expect(ends.across).toEqual([ticks('5 21/32 in'), ticks('5 21/32 in')]);
    expect(underHalf).toBe(32);
  });

  test('may have fourteen whole tiles with a joint of 5/32, which leaves gaps of 19/64', () => {
    const { reason, nearFull } = withReason(start.alternatives, 'start.easedJoint');
    expect(reason[0]!.figures).toMatchObject({
      tileCount: 14,
      joint: ticks('5/32 in'),
      gap: ticks('19/64 in'),
    });
    expect(nearFull).toBe(0);
  });
});

describe('a 7 1/2 in hole in 17 3/4 in tile, centre 15 in and 12 in from the walls (common practice, no source)', () => {
  const from = [
    { wall: 'D-A', distance: ticks('15 in') },
    { wall: 'A-B', distance: ticks('12 in') },
  ] as const;
  const shape: ObstacleSpec['shape'] = { kind: 'circle', diameter: ticks('7 in'), from };
  const surface = surfaceOf(rectangle(ticks('60 in'), ticks('96 in')), {
    obstacles: [{ ...wallFacts({ gapMax: 2032 }), name: 'flange', meets: 'flange', shape }],
    start: {
      along: { kind: 'centred', between: ['D-A', 'B-C'] },
      across: { kind: 'centred', between: ['A-B', 'C-D'] },
    },
  });
  const { start, pieces, frame } = layOut(
    jobOf(ticks('17 3/4 in'), ticks('17 3/4 in'), ticks('3/16 in')),
    surface,
  ).layout;

  test('nicks four tiles where the layout is balanced', () => {
    expect(pieces.filter(({ circles }) => circles.length > 0)).toHaveLength(4);
    expect(start.chosen.hardCuts).toBe(4);
  });

  test('leaves two plain cuts after a shift of 1 13/32 in, ends 10 5/16 and 13 1/8', () => {
    const { ends, reason, hardCuts, webFaults } = withReason(start.alternatives, 'start.simplified');
    expect(reason[0]!.figures).toMatchObject({
      beforeCount: 4,
      afterCount: 2,
      shiftAlong: -ticks('1 13/32 in'),
    });
    expect(ends.along).toEqual([ticks('10 5/16 in'), ticks('13 1/8 in')]);
    expect({ hardCuts, webFaults }).toEqual({ hardCuts: 2, webFaults: 0 });
  });

  test('has 1/2 in all round with its gap', () => {
    expect(frame.obstacles[0]!.circle!.clearRadius * 2).toBe(ticks('7 1/2 in'));
  });
});

describe('a room of 16 x 18 ft with a corner cut off at 45° and a hearth (common practice, no source)', () => {
  const leg = ticks('33 15/16 in');
  const [width, height] = [ticks('16 ft'), ticks('18 ft')];
  const corners = [
    ...rectangle(width, height).slice(0, 2),
    [width, height - leg],
    [width - leg, height],
    [0, height],
  ] as const;
  const hearth: ObstacleSpec = {
    ...wallFacts({ meets: 'hearth', gapMax: 2540 }),
    name: 'hearth',
    shape: {
      kind: 'rectangle',
      along: ticks('42 in'),
      out: ticks('18 in'),
      from: [
        { wall: 'A-B', distance: 0 },
        { wall: 'E-A', distance: ticks('75 in') },
      ],
    },
  };
  const surface = surfaceOf(corners as never, {
    obstacles: [hearth],
    start: {
      along: { kind: 'centred', between: ['E-A', 'B-C'] },
      across: { kind: 'centred', between: ['A-B', 'D-E'] },
    },
  });
  const { pieces, faults, start } = layOut(
    jobOf(ticks('19 11/16 in'), ticks('19 11/16 in'), ticks('3/16 in')),
    surface,
  ).layout;
  const thin = faults.filter(({ code }) => code === 'thinStrip').flatMap((fault) => fault.pieces);

  test('takes 110 pieces, 72 whole and 38 cut, ends 16 5/32 and 18 7/32', () => {
    expect(start.chosen).toMatchObject({ pieces: 110, whole: 72, cut: 38 });
    expect(start.chosen.ends.along).toEqual([ticks('16 5/32 in'), ticks('16 5/32 in')]);
    expect(start.chosen.ends.across).toEqual([ticks('18 7/32 in'), ticks('18 7/32 in')]);
  });

  test('names the three that fail any strip limit; without them 107 are laid', () => {
    expect(thin).toHaveLength(3);
    expect(pieces.filter(({ id }) => !thin.includes(id))).toHaveLength(107);
    const behind = faults.find(({ code, edge }) => code === 'thinStrip' && edge === 'hearth:3');
    expect(behind).toMatchObject({ figures: { size: ticks('7/32 in'), count: 2 } });
  });

  test('offers a shift that leaves none of them', () => {
    const { thin: left, reason } = withReason(start.alternatives, 'start.freedStrips');
    expect(left).toBe(0);
    expect(reason[0]!.figures).toMatchObject({ beforeCount: 3, afterCount: 0 });
  });
});
