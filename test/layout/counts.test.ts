import { describe, expect, test } from 'vitest';
import { bounds } from '../../src/geometry/index.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../support/surfaceOf.ts';

const tally = ({ pieces }: { pieces: readonly { whole: boolean }[] }) => ({
  pieces: pieces.length,
  whole: pieces.filter(({ whole }) => whole).length,
});

describe('counts of printed examples, tiles laid from two walls', () => {
  test.each([
    ['an Australian public floor-covering course, unit 4, estimating', '2630 mm', '3540 mm', '300 mm', 108],
    ['a school mathematics exercise', '6000 mm', '1800 mm', '500 mm', 48],
    ['a civil-engineering course page, by count and not by area', '2500 mm', '3000 mm', '200 mm', 195],
    ['a public how-to article', '184 in', '144 in', '12 in', 192],
  ])('%s: %s x %s, tile %s is %i tiles', (_, width, height, tile, count) => {
    const surface = surfaceOf(rectangle(ticks(width), ticks(height)), {
      facts: { gap: 0, gapMax: 0 },
      start: { along: { kind: 'tile', on: 'D-A' }, across: { kind: 'tile', on: 'A-B' } },
    });
    expect(layOut(jobOf(ticks(tile), ticks(tile), 0), surface).layout.pieces).toHaveLength(count);
  });
});

describe('a room of 126 x 98 in, tile 11 7/8 along the 126 x 23 7/8, joint 1/8, gap 1/4 (geometry)', () => {
  const surface = surfaceOf(rectangle(ticks('126 in'), ticks('98 in')));
  const { layout } = layOut(jobOf(ticks('11 7/8 in'), ticks('23 7/8 in'), ticks('1/8 in')), surface);
  const sizes = layout.pieces
    .filter(({ whole }) => !whole)
    .map(({ shape }) => {
      const { minX, minY, maxX, maxY } = bounds(shape.outer);
      return `${maxX - minX} ${maxY - minY}`;
    });
  const size = (x: string, y: string) => sizes.filter((one) => one === `${ticks(x)} ${ticks(y)}`).length;

  test('takes 55 pieces, 27 of them whole', () => expect(tally(layout)).toEqual({ pieces: 55, whole: 27 }));

  test('has 6 of 8 11/16 x 23 7/8, 18 of 11 7/8 x 12 11/16 and 4 corners', () => {
    expect(size('8 11/16 in', '23 7/8 in')).toBe(6);
    expect(size('11 7/8 in', '12 11/16 in')).toBe(18);
    expect(size('8 11/16 in', '12 11/16 in')).toBe(4);
  });
});

describe('a kitchen of 3000 x 3600 mm with a corridor 1200 mm wide, 7200 mm in all (common practice, no source)', () => {
  const mm = (value: number) => value * 320;
  const corners = (
    [
      [0, 0],
      [7200, 0],
      [7200, 1200],
      [3000, 1200],
      [3000, 3600],
      [0, 3600],
    ] as const
  ).map(([x, y]) => [mm(x), mm(y)] as const);
  const surface = surfaceOf(corners, { facts: { gap: mm(6), gapMax: mm(12) } });
  const { start } = layOut(jobOf(mm(300), mm(300), mm(3), 'mm'), surface).layout;
  const corridor = start.alternatives.find(({ reason }) =>
    reason.some(({ code, figures }) => code === 'start.otherRun' && figures.axis === 'across'),
  );

  test('balanced in the kitchen: 277.5 mm at both sides, 129 whole and 47 cut', () => {
    expect(start.chosen).toMatchObject({ pieces: 176, whole: 129, cut: 47 });
    expect(start.chosen.ends).toEqual({ along: [mm(259.5), mm(259.5)], across: [mm(277.5), mm(277.5)] });
  });

  test('balanced in the corridor, shown beside it: 289.5 mm at both sides, 116 whole and 60 cut', () => {
    expect(corridor).toMatchObject({ pieces: 176, whole: 116, cut: 60 });
    expect(corridor?.ends).toEqual({ along: [mm(259.5), mm(259.5)], across: [mm(289.5), mm(289.5)] });
  });
});
