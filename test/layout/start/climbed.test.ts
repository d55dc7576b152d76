import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/geometry/index.ts';
import type { Choice } from '../../../src/layout/start/Choice.ts';
import { climbed } from '../../../src/layout/start/climbed.ts';
import type { Scored } from '../../../src/layout/start/StartQuestion.ts';

const INCH = 8128;

/** A hill whose top is at a place: the smallest piece shrinks by a hundredth of a tile for each 1/16 in away from it. */
const hill = ([topX, topY]: Point) => {
  const laid: Point[] = [];
  const lay = (choice: Choice): Scored => {
    laid.push(choice.origin);
    const [x, y] = choice.origin;
    const off = Math.abs(x - topX) + Math.abs(y - topY);
    const candidate = {
      slivers: 0,
      smallestShare: 0.5 - (0.01 * off) / 508,
      shift: 0,
      origin: choice.origin,
    };
    return { choice, candidate } as unknown as Scored;
  };
  return { lay, laid };
};
const at = (origin: Point) => ({ origin }) as unknown as Choice;
const anywhere = ([x, y]: Point, [u, v]: Point) => at([x + u, y + v]);

describe('a start that is moved on from', () => {
  test('comes to where its smallest piece is largest, to 1/64 in each way', () => {
    const { lay } = hill([1.3 * INCH, -0.7 * INCH]);
    const { best } = climbed(lay(at([0, 0])), 200, anywhere, lay);
    expect(Math.abs(best.choice.origin[0] - 1.3 * INCH)).toBeLessThanOrEqual(INCH / 64);
    expect(Math.abs(best.choice.origin[1] + 0.7 * INCH)).toBeLessThanOrEqual(INCH / 64);
  });

  test('lays no more starts than it may, none twice, and says how many are left', () => {
    for (const most of [0, 3, 10, 60, 200]) {
      const { lay, laid } = hill([1.3 * INCH, -0.7 * INCH]);
      const { left } = climbed(lay(at([0, 0])), most, anywhere, lay);
      const moves = laid.slice(1);
      expect(moves.length).toBeLessThanOrEqual(most);
      expect(left).toBeLessThanOrEqual(most - moves.length);
      expect(new Set(laid.map(String)).size).toBe(laid.length);
    }
  });

  test('keeps to where the walls and the job let it go', () => {
    const { lay, laid } = hill([1.3 * INCH, -0.7 * INCH]);
    const onLine = (from: Point, by: Point) => (by[1] === 0 ? anywhere(from, by) : undefined);
    const { best } = climbed(lay(at([0, 0])), 200, onLine, lay);
    expect(laid.every(([, y]) => y === 0)).toBe(true);
    expect(Math.abs(best.choice.origin[0] - 1.3 * INCH)).toBeLessThanOrEqual(INCH / 64);
  });

  test('stays where nothing near by is better', () => {
    const { lay } = hill([0, 0]);
    expect(climbed(lay(at([0, 0])), 200, anywhere, lay).best.choice.origin).toEqual([0, 0]);
  });
});
