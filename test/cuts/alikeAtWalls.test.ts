import { expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';

const file = `
title: At 45 degrees
revision: {letter: A, date: 2027-03-01}
print: {paper: a4, units: mm, saw step: 1 mm}
tile: {field: {read: 300 mm x 300 mm}}
joint: 3 mm
floor:
  walls: {A-B: 3177 mm, B-C: 2391 mm, C-D: 3177 mm, D-A: 2391 mm}
  pattern: {straight: {turned: 45}}
`;

// The middles of two courses lie a module apart, and so do the places where they meet a wall at 45 degrees: what is left of the last
// tile there is the same in every course, in one of pieces cut to less than half a tile too.
test('all rows of a floor at 45° end alike at one wall, also those at its edges', () => {
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if (!('packet' in made)) throw new Error('no packet');
  const ends = new Map<string, number[]>();
  for (const { edges, terms } of made.packet.surfaces[0]!.rows) {
    const pieces = terms.filter(({ what }) => what === 'piece');
    if (pieces.length < 2) continue;
    for (const [edge, term] of [[edges[0], pieces[0]!], [edges[1], pieces.at(-1)!]] as const) // biome-ignore format: both ends
      ends.set(edge, [...(ends.get(edge) ?? []), term.exact]);
  }
  expect([...ends.keys()].sort()).toEqual(['A-B', 'B-C', 'C-D', 'D-A']);
  for (const sizes of ends.values()) {
    expect(sizes.length).toBeGreaterThan(5);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThan(320);
  }
});
