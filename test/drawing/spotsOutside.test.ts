import { describe, expect, test } from 'vitest';
import { type Box, boxRound, overlap } from '../../src/drawing/boxes.ts';
import { boxIndex } from '../../src/drawing/boxIndex.ts';
import type { Spot } from '../../src/drawing/Mark.ts';
import { outsideOf, spotsOutside, standsOutside } from '../../src/drawing/spotsOutside.ts';

const paper: Box = { left: 0, bottom: 0, right: 80, top: 60 };
const room: readonly Spot[] = [[14, 12], [64, 12], [64, 48], [14, 48]]; // biome-ignore format: a ring on a line
const column: readonly Spot[] = [[30, 20], [44, 20], [44, 34], [30, 34]]; // biome-ignore format: a ring on a line
const taken: readonly Box[] = [{ left: 20, bottom: 0, right: 40, top: 6 }];

const where = outsideOf(paper, room, [column]);
const near = spotsOutside(where, boxIndex(taken), 3, 40);
const inside = ([x, y]: Spot, ring: readonly Spot[]) => {
  const [low, high] = [ring[0]!, ring[2]!];
  return x > low[0] && x < high[0] && y > low[1] && y < high[1];
};

describe('places to which names are led', () => {
  const spots = near([16, 14]);

  test('lie outside the room or on the column, on the paper, clear of what is there and 2 mm off every wall', () => {
    expect(spots.length).toBeGreaterThan(20);
    for (const spot of spots) {
      expect(!inside(spot, room) || inside(spot, column)).toBe(true);
      const box = boxRound(spot, 3, 3);
      expect(taken.some((other) => overlap(box, other, 1))).toBe(false);
      expect(standsOutside(box, where)).toBe(true);
    }
    expect(spots.some((spot) => inside(spot, column))).toBe(true);
  });

  test('come nearest first, none farther than was asked', () => {
    const far = spots.map(([x, y]) => Math.hypot(x - 16, y - 14));
    expect(far).toEqual([...far].sort((a, b) => a - b));
    expect(far.at(-1)).toBeLessThanOrEqual(40);
  });

  test('leave out none that has room', () => {
    const all: string[] = [];
    for (let x = 1; x < 80; x += 2)
      for (let y = 1; y < 60; y += 2) {
        const box = boxRound([x, y], 3, 3);
        const bare = !inside([x, y], room) || inside([x, y], column);
        const free = !taken.some((other) => overlap(box, other, 1)) && standsOutside(box, where);
        if (bare && free && Math.hypot(x - 16, y - 14) <= 40) all.push(`${x} ${y}`);
      }
    expect(spots.map(([x, y]) => `${x} ${y}`).sort()).toEqual(all.sort());
  });

  test('are the same when they are asked for again', () => {
    expect(near([16, 14])).toEqual(spots);
  });
});

test('a box on the paper that a wall runs through, or that stands too near to one, does not stand outside', () => {
  expect(standsOutside(boxRound([14, 30], 4, 4), where)).toBe(false);
  expect(standsOutside(boxRound([10.5, 30], 4, 4), where)).toBe(false);
  expect(standsOutside(boxRound([9, 30], 4, 4), where)).toBe(true);
  expect(standsOutside(boxRound([1, 30], 4, 4), where)).toBe(false);
});
