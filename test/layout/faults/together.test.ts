import { expect, test } from 'vitest';
import type { Ring } from '../../../src/geometry/index.ts';
import { faultsOf } from '../../../src/layout/faults/faultsOf.ts';
import type { Ground } from '../../../src/layout/frame/Ground.ts';
import type { NamedPiece } from '../../../src/layout/names/namePieces.ts';

const JOINT = 480;
const ground = {
  minShare: 0.5,
  minStrip: 0,
  minWeb: 0,
  faces: [{ id: 'A-B', from: [0, 0], to: [90_000, 0], gapMax: 0, gap: 0 }],
} as unknown as Ground;

/** A piece of a tile of one size in place that wall A-B leaves so wide across. */
function plank(id: string, [width, height]: readonly [number, number], across: number): NamedPiece {
  const rect = (high: number): Ring => [
    [0, 0],
    [width, 0],
    [width, high],
    [0, high],
  ];
  const laid = {
    ring: rect(height),
    shape: { outer: rect(across), holes: [] },
    extent: [width, across],
    shares: [1, across / height],
    whole: false,
    faces: [0],
    seen: 'plain',
    web: null,
  };
  return { id, laid } as unknown as NamedPiece;
}

/** A plank of 80,000 by 20,000 ticks lies along the wall or stands on it, as in a herringbone square to it. */
const lying = [80_000, 20_000] as const;
const standing = [20_000, 80_000] as const;

test('pieces of one measure of the tile are told together, with the smallest of them', () => {
  const faults = faultsOf([plank('A1-1', lying, 6_000), plank('A1-2', lying, 5_000)], [], ground, JOINT);
  expect(faults).toHaveLength(1);
  expect(faults[0]).toMatchObject({ code: 'underHalf', pieces: ['A1-1', 'A1-2'], figures: { size: 5_000 } });
});

test('pieces short of the length and pieces short of the width are told apart, each with its own limit', () => {
  const faults = faultsOf([plank('A1-1', lying, 6_000), plank('A1-2', standing, 30_000)], [], ground, JOINT);
  const told = faults.map(({ code, pieces, figures: { size, limit } }) => ({ code, pieces, size, limit }));
  expect(told).toEqual([
    { code: 'underHalf', pieces: ['A1-1'], size: 6_000, limit: 20_000 / 2 - JOINT / 2 },
    { code: 'underHalf', pieces: ['A1-2'], size: 30_000, limit: 80_000 / 2 - JOINT / 2 },
  ]);
});

test('so are those that lose almost nothing of either', () => {
  const faults = faultsOf([plank('A1-1', lying, 19_500), plank('A1-2', standing, 78_000)], [], ground, JOINT);
  expect(faults.map(({ code, pieces }) => [code, pieces])).toEqual([
    ['nearFull', ['A1-1']],
    ['nearFull', ['A1-2']],
  ]);
});
