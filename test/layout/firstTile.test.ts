import { describe, expect, test } from 'vitest';
import { bounds } from '../../src/geometry/index.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';

/** A powder room whose upright chalk line lies beside a wall, clear of flange and pedestal: beyond it are few whole tiles. */
const powderRoom = (pattern: string) => `
title: Powder room
house year: 2004
revision: {letter: A, date: 2027-03-01}
tile:
  large: {name: Large, read: 11 7/8 in x 11 7/8 in}
  small: {name: Small, read: 3 7/8 in x 3 7/8 in}
joint: 1/8 in
floor:
  walls: {A-B: 3 ft 8 1/4 in, B-C: 6 ft 10 1/8 in, C-D: 3 ft 8 1/2 in, D-A: 6 ft 10 in}
  diagonals: {A-C: 7 ft 9 1/8 in, B-D: 7 ft 9 1/4 in}
  doorways:
    hall: {in: A-B, from A: 7 in, clear: 28 in, wall: 4 1/2 in, door line: 2 1/4 in, left: undercut 1/2 in, right: undercut 1/2 in, beyond: wood}
  obstacles:
    flange: {circle: 7 in, from C-D: 12 in, from B-C: 22 in, meets: flange}
    pedestal: {circle: 10 in, from D-A: 8 in, from A-B: 40 in, meets: column}
  pattern: ${pattern}
`;

/** How far a tile's nearer sides stand from both lines; nothing where it lies across one of them. */
function offLines(ring: Parameters<typeof bounds>[0], [x, y]: readonly [number, number]): number | undefined {
  const { minX, minY, maxX, maxY } = bounds(ring);
  const off = [Math.max(minX - x, x - maxX), Math.max(minY - y, y - maxY)] as const;
  return Math.min(...off) < 0 ? undefined : Math.hypot(...off);
}

describe('the first tile of a pattern that is not in courses', () => {
  test.each(['two squares', '{two squares, turned: 45}', '{two squares, along: B-C}'])(
    'is a whole one near the crossing: %s',
    (pattern) => {
      const made = makePacket(readJob(powderRoom(pattern), 'job.yaml').job!);
      if ('problems' in made) throw new Error(JSON.stringify(made.problems));
      const { pieces, chalk, pattern: laid } = made.packet.surfaces[0]!;
      const whole = pieces.filter((piece) => piece.whole);
      const off = whole.flatMap(({ fullTile }) => offLines(fullTile, chalk.crossing) ?? []);
      const first = whole.find(({ id }) => id === chalk.firstPiece)!;
      const repeat = Math.max(...[laid.a, laid.b].flat().map(Math.abs));
      expect(offLines(first.fullTile, chalk.crossing)).toBeLessThanOrEqual(Math.min(...off) + repeat);
    },
  );
});

/** A hall in running bond, laid whole against a door whose floor begins a course low; where its upright line lies is left to the search. */
const hall = (pattern: string, start: string) => `
title: Hall of planks
house year: 2004
revision: {letter: A, date: 2027-03-01}
tile:
  field: {name: Plank, read: 35 7/16 in x 5 7/8 in, edge: rectified, bow: 1/32 in}
joint: 1/8 in
floor:
  walls: {A-B: 18 ft 3 in, B-C: 4 ft 1 in, C-D: 18 ft 3 in, D-A: 4 ft 1 in}
  doorways:
    den: {in: B-C, from B: 8 in, clear: 30 in, wall: 4 1/2 in, left: plain, right: plain, beyond: tile}
  pattern: ${pattern}
  start: ${start}
`;

const HALVES = '{running: 1/2}';
const bonds = [
  [HALVES, '{across: joint on den}'],
  [HALVES, '{across: tile on A-B}'],
  [HALVES, '{along: tile on D-A, across: tile on A-B}'],
  [HALVES, '{across: cut of 4 in at A-B}'],
  ['{running: 1/3}', '{across: joint on den}'],
  ['{running: 1/3}', '{across: tile on A-B}'],
  ['{running: 7 in}', '{across: joint on den}'],
  ['{running: 7 in}', '{across: tile on A-B}'],
] as const;

describe('the first tile of a running bond', () => {
  test.each(bonds)('has its corner at the crossing, or its distance is told: %s, start %s', (bond, start) => {
    const made = makePacket(readJob(hall(bond, start), 'job.yaml').job!);
    if ('problems' in made) throw new Error(JSON.stringify(made.problems));
    const { pieces, chalk, joint } = made.packet.surfaces[0]!;
    const whole = pieces.filter((piece) => piece.whole);
    const least = Math.min(...whole.flatMap(({ fullTile }) => offLines(fullTile, chalk.crossing) ?? []));
    const first = whole.find(({ id }) => id === chalk.firstPiece)!;
    expect(offLines(first.fullTile, chalk.crossing)).toBe(least);
    // Half a joint off both lines, it may be rounded up.
    const isAtCrossing = least <= Math.hypot(joint / 2 + 1, joint / 2 + 1);
    expect(chalk.guide === undefined).toBe(isAtCrossing);
    if (chalk.guide) expect(Math.hypot(chalk.guide.along, chalk.guide.across)).toBe(least);
  });
});
