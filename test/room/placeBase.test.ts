import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { placeBase } from '../../src/room/placeBase.ts';
import { feet } from '../../src/trade/index.ts';

/** An L of 12 by 10 ft less 6 by 4 ft at its far right, walked from A with the room on the left. */
function placed(base: string) {
  const text = `title: L
revision: {date: 2027-03-01}
tile: {field: {read: 12 in x 12 in}}
joint: 3/16 in
floor:
  walls: {A-B: 12 ft, B-C: 6 ft, C-D: 6 ft, D-E: 4 ft, E-F: 6 ft, F-A: 10 ft}
  angles: {D: 270}
base:
  below: concrete
${base}`;
  const { job, problems } = readJob(text, 'job.yaml', 'l');
  if (!job) throw new Error(JSON.stringify(problems));
  const made = makeRoom(job.surfaces[0]!);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return placeBase(job.base, job.surfaces[0]!, made.room, 'inches');
}

const ft = (x: number, y: number) => [feet(x), feet(y)];

describe('what is found on a base stands where it was measured', () => {
  test('a crack by its points from two walls', () => {
    const { base } = placed('  cracks: {long: {is: moving, from A-B: [1 ft, 5 ft], from F-A: [2 ft, 7 ft]}}');
    expect(base.cracks).toEqual([{ where: 'long', moving: true, line: [ft(2, 1), ft(7, 5)] }]);
  });

  test('distances from a wall on the right count to the left', () => {
    const { base } = placed('  hollow: {near B: {from A-B: 1 ft, from B-C: 2 ft, across: 6 in}}');
    expect(base.hollow).toEqual([{ where: 'near B', at: ft(10, 1), across: feet(0.5) }]);
  });

  test('a joint runs as far as the floor does', () => {
    const { base } = placed('  joints: {from A-B: [3 ft, 8 ft]}');
    expect(base.joints.map(({ from, to }) => [from, to])).toEqual([
      [ft(0, 3), ft(12, 3)],
      [ft(0, 8), ft(6, 8)],
    ]);
  });

  test('rows of readings run along the wall named first, away from the second', () => {
    const { base } = placed(
      '  flatness grid: {from A-B: 1 ft, from B-C: 2 ft, every: 3 ft, drops: [[40 in, 41 in], [40 in, none]]}',
    );
    expect(base.readings.map(({ row, number, at }) => [row, number, at])).toEqual([
      [1, 1, ft(10, 1)],
      [1, 2, ft(7, 1)],
      [2, 1, ft(10, 4)],
    ]);
    expect(base.readings[1]!.height - base.readings[0]!.height).toBe(-feet(1 / 12));
  });

  test('a reading in the corner that is cut out of the L is off the floor; one on its edge is not', () => {
    const rows = (first: string) =>
      `  flatness grid: {from A-B: ${first}, from F-A: 9 ft, every: 1 ft, heights: [[0 in]]}`;
    expect(placed(rows('6 ft')).problems).toEqual([]);
    expect(placed(rows('7 ft')).problems.map(({ code }) => code)).toEqual(['flatnessOffFloor']);
  });
});
