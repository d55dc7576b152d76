import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';
import { carriedJoints } from '../../src/layout/carriedJoints.ts';
import { layOut } from '../support/layOut.ts';
import { jobOf, rectangle, surfaceOf, ticks } from '../support/surfaceOf.ts';

const side = ticks('10 ft');
const [tile, joint] = [ticks('11 13/16 in'), ticks('3/16 in')];
const square = layOut(jobOf(tile, tile, joint), surfaceOf(rectangle(side, side))).layout;
const across = (y: string, to = y): readonly Point[] => [
  [0, ticks(y)],
  [side, ticks(to)],
];
const carried = (line: readonly Point[], moving = true) =>
  carriedJoints(square, { cracks: [{ where: 'here', moving, line }], hollow: [], joints: [], readings: [] });

// Arithmetic: gaps of 1/4, eight whole tiles and two cuts of 11 21/32 each way, so that joints stand at every whole foot.
describe('which tile joint takes up a joint of the base', () => {
  test('one that lies right over it', () => {
    expect(carried(across('4 ft'))).toMatchObject([{ number: 1, kind: 'over', axis: 'across', away: 0 }]);
  });

  test('the nearest one beside it, with how far it is off at most', () => {
    expect(carried(across('4 ft 2 in', '4 ft 3 in'))).toMatchObject([
      { kind: 'beside', axis: 'across', away: ticks('3 in') },
    ]);
  });

  test('counted from the chalk line', () => {
    const [one] = carried(across('3 ft'));
    const crossing = square.chalk.crossing[1];
    expect(crossing + one!.distance!).toBe(ticks('3 ft'));
    expect(one!.steps! * ticks('12 in')).toBe(one!.distance);
  });

  test('none where it runs across the joints', () => {
    expect(carried(across('1 ft', '9 ft'))).toEqual([{ number: 1, kind: 'none' }]);
  });

  test('a crack that is still is not carried up', () => {
    expect(carried(across('4 ft'), false)).toEqual([]);
  });
});
