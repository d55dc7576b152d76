import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { TICKS_PER_INCH } from '../../src/measure/index.ts';
import { makePacket } from '../../src/packet/makePacket.ts';

/** A bath of 5 by 8 ft with square tile of a size, joint 1/8 in, gap 1/4 in, kerf 2 mm. */
const bath = (tile: string, start = '') => `title: Bath
revision: {letter: A, date: 2027-03-01}
tile: {field: {read: ${tile} x ${tile}}}
joint: 1/8 in
saw: {kerf: 2 mm}
floor:
  walls: {A-B: 60 in, B-C: 96 in, C-D: 60 in, D-A: 96 in}
  pattern: {straight}
  ${start}
`;

function curveOf(text: string) {
  const read = readJob(text, 'bath');
  if (!('job' in read) || !read.job) throw new Error('the job file can be read');
  const made = makePacket(read.job, { curve: true });
  if ('problems' in made) throw new Error('the bath can be laid');
  const [surface] = made.packet.surfaces;
  return { surface: surface!, tiles: made.packet.tiles.field!, curve: surface!.curve ?? [] };
}

// Recorded: tiles, and the narrowest cut that must at least be had with them.
const measured = [
  [
    '18 in',
    [
      [24, 11 + 7 / 16],
      [20, 8.75],
      [18, 6.29],
    ],
  ],
  [
    '13 in',
    [
      [40, 8 + 5 / 16],
      [38, 6.25],
      [35, 6.09],
    ],
  ],
] as const;

describe('the curve of narrowest cut against tiles', () => {
  test.each(measured)('%s tile: as few tiles with cuts at least as wide', (tile, figures) => {
    const { curve } = curveOf(bath(tile));
    for (const [tiles, narrowest] of figures) {
      const found = curve
        .filter((one) => one.tiles <= tiles)
        .map(({ candidate }) => candidate.smallest / TICKS_PER_INCH);
      expect(Math.max(...found)).toBeGreaterThanOrEqual(narrowest);
    }
  });

  test.each(measured)(
    '%s tile: each start but the chosen one takes fewer tiles than all with as wide a cut',
    (tile) => {
      const { curve } = curveOf(bath(tile));
      curve.slice(1).forEach((one) => {
        const wider = curve.filter(({ candidate }) => candidate.smallestShare > one.candidate.smallestShare);
        for (const other of wider) expect(one.tiles).toBeLessThan(other.tiles);
        expect(one.tiles).toBe(one.bound);
      });
    },
  );

  test('a start that is named as its line says is built with as many tiles', () => {
    const { surface, tiles } = curveOf(
      bath('18 in', 'start: {along: cut of 8 7/8 in at D-A, across: cut of 8 7/8 in at A-B}'),
    );
    expect(tiles.needed).toBe(20);
    expect(surface.start.chosen.smallest).toBeGreaterThanOrEqual(8.75 * TICKS_PER_INCH);
  });

  test('there is none once the work has begun', () => {
    expect(curveOf(`status: underway\n${bath('18 in')}`).curve).toEqual([]);
  });
});
