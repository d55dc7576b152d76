import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { TICKS_PER_INCH } from '../../src/measure/index.ts';
import { makePacket } from '../../src/packet/makePacket.ts';

/** A room of 5 by 5 ft laid in half bond, two and a half tiles to a course; what the start may give up for tiles as told. */
function roomOf(tolerance: string) {
  const { job } = readJob(
    `title: Room
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: 23 3/4 in x 11 3/4 in, edge: rectified}}
joint: 1/8 in
print: {saw step: 1/32 in}
floor:
  walls: {A-B: 60 in, B-C: 60 in, C-D: 60 in, D-A: 60 in}
  gap: 1/8 in
  pattern: running 1/2
  start: {tolerance: {${tolerance}}}
`,
    'room',
  );
  if (!job) throw new Error('the job file can be read');
  const made = makePacket(job);
  if ('problems' in made) throw new Error('the room can be laid');
  const { start } = made.packet.surfaces[0]!;
  return { start, needed: made.packet.tiles.field!.needed };
}

describe('tiles, after all that the trade puts before them', () => {
  const usual = roomOf('');
  const eighth = roomOf('tiles: 1/8 in, balance: 1/8 in');

  // 60 less both gaps of 1/8 in and two joints leave 59 1/2: two tiles and a half one short of a kerf, or two unlike halves.
  test('decide nothing where they would cost the balance, unless the job says so', () => {
    expect(usual.start.reasons.map(({ code }) => code)).not.toContain('start.fewerTiles');
    expect(roomOf('tiles: 0 in')).toEqual(usual);
  });

  test('decide where the job lets balance go by an eighth, and the reason says how many are saved', () => {
    const reason = eighth.start.reasons.find(({ code }) => code === 'start.fewerTiles');
    expect(reason?.figures.fewerCount).toBe(usual.needed - eighth.needed);
    expect(eighth.needed).toBeLessThan(usual.needed);
  });

  test('cost no more of the smallest piece and of the balance than the job allows', () => {
    expect(eighth.start.chosen.smallest).toBeGreaterThanOrEqual(
      usual.start.chosen.smallest - TICKS_PER_INCH / 8,
    );
    expect(eighth.start.chosen.shift).toBeLessThanOrEqual(usual.start.chosen.shift + TICKS_PER_INCH / 8 + 16);
  });

  test('leave the start that was the best before as the second', () => {
    expect(eighth.start.runnerUp?.origin).toEqual(usual.start.chosen.origin);
  });
});
