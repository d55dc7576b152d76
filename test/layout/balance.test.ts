import { describe, expect, test } from 'vitest';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../support/surfaceOf.ts';
import { balanceCases } from './cases/balance.ts';

describe('a run is balanced with the largest equal cuts', () => {
  test.each(balanceCases.map((one) => [`${one.name} (${one.source})`, one] as const))('%s', (_, one) => {
    const [tile, joint, gap, end] = [ticks(one.tile), ticks(one.joint), ticks(one.gap), ticks(one.end)];
    const room = rectangle(ticks(one.wall), tile + 2 * gap);
    const surface = surfaceOf(room, {
      facts: { gap, gapMax: gap },
      start: { across: { kind: 'tile', on: 'A-B' } },
    });
    const { pieces, start } = layOut(jobOf(tile, tile, joint), surface).layout;
    expect(start.along.what).toBe(one.middle);
    expect(start.chosen.ends.along).toEqual([end, end]);
    expect(pieces.filter(({ whole }) => whole)).toHaveLength(one.full);
    // The row closes: two ends, the full tiles, one joint more than there are full tiles, two gaps.
    expect(2 * end + one.full * tile + (one.full + 1) * joint + 2 * gap).toBe(ticks(one.wall));
  });
});

describe('rows of third bond, 120 in wide, tile 23 7/8 in, joint 1/8 in, gap 1/4 in (geometry)', () => {
  const surface = surfaceOf(rectangle(ticks('120 in'), ticks('120 in')), {
    pattern: { name: 'running', offset: { numerator: 1, denominator: 3 } },
  });
  const { pieces, pattern } = layOut(
    jobOf(ticks('23 7/8 in'), ticks('11 7/8 in'), ticks('1/8 in')),
    surface,
  ).layout;

  test('end in 23 11/16 and 23 11/16, 7 11/16 and 15 11/16, 15 11/16 and 7 11/16', () => {
    const rows = pattern.tiles.map((_, kind) => {
      const row = pieces.filter(
        (piece) => (((piece.row - kind) % 3) + 3) % 3 === 0 && piece.row > -3 && piece.row < 3,
      );
      const first = row
        .filter(({ row: r }) => r === row[0]!.row)
        .map(({ shape }) => shape.outer.map(([x]) => x));
      const width = (xs: number[]) => Math.max(...xs) - Math.min(...xs);
      return [width(first[0]!), width(first.at(-1)!)];
    });
    const [large, small, middle] = ['23 11/16 in', '7 11/16 in', '15 11/16 in'].map(ticks);
    expect(rows.sort((a, b) => b[0]! - a[0]!)).toEqual([
      [large, large],
      [middle, small],
      [small, middle],
    ]);
  });
});

describe('half bond between corner joints of 1/8 in (common practice, no source)', () => {
  const halfBond = (tile: string, width: string, wall: string) => {
    const surface = surfaceOf(rectangle(ticks(wall), ticks('60 in')), {
      facts: { gap: 1016, gapMax: 1016 },
      pattern: { name: 'running' },
    });
    return layOut(jobOf(ticks(tile), ticks(width), ticks('1/8 in')), surface).layout.start;
  };

  test('a small cut in every second course is cured by a quarter: 2 13/16 and 5 13/16', () => {
    const { chosen, along } = halfBond('5 7/8 in', '2 7/8 in', '57 in');
    expect(along.what).toMatch(/Quarter$/);
    expect([...chosen.ends.along].sort((a, b) => a - b)).toEqual([ticks('2 13/16 in'), ticks('5 13/16 in')]);
  });

  test('23 3/4 in tile on 60 in: 11 29/32 at one end and a whole tile at the other', () => {
    const { chosen } = halfBond('23 3/4 in', '11 3/4 in', '60 in');
    expect([...chosen.ends.along].sort((a, b) => a - b)).toEqual([ticks('11 29/32 in'), ticks('23 3/4 in')]);
  });

  test('with a third offset the same wall does no better than 5 15/16 in', () => {
    const surface = surfaceOf(rectangle(ticks('60 in'), ticks('60 in')), {
      facts: { gap: 1016, gapMax: 1016 },
      pattern: { name: 'running', offset: { numerator: 1, denominator: 3 } },
    });
    const { start } = layOut(jobOf(ticks('23 3/4 in'), ticks('11 3/4 in'), ticks('1/8 in')), surface).layout;
    expect(start.chosen.smallest).toBe(ticks('5 15/16 in'));
  });
});
