import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { faultLines } from '../../src/sheets/faultLines.ts';
import { gates } from '../../src/sheets/gates.ts';
import { materialTally } from '../../src/sheets/materialTally.ts';
import { type SheetContext, sheetContext } from '../../src/sheets/SheetContext.ts';
import { readWords } from '../../src/site/words.ts';

const words = readWords(join(import.meta.dirname, '../../layouts/words'));

/** A small closet laid in one pattern, of tiles that bear their names. */
function closet(tiles: string, pattern: string): SheetContext {
  const file = `
title: Closet
house year: 1999
revision: {letter: A, date: 2027-03-01}
tile: {${tiles}}
joint: 2 mm
floor:
  walls: {A-B: 1300 mm, B-C: 1000 mm, C-D: 1300 mm, D-A: 1000 mm}
  pattern: ${pattern}
`;
  const made = makePacket(readJob(file, 'job.yaml').job!);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return sheetContext(made.packet, { lang: 'en', say: words.say('en') });
}

const rectangle = closet('field: {name: Field, read: 300 mm x 200 mm}', 'straight');
const hexagon = closet('field: {name: Field, hexagon: {flats: 200 mm}}', 'hexagon');
const octagon = closet(
  'field: {name: Field, octagon: {flats: 200 mm}}, dot: {name: Dot, read: 84 mm x 84 mm}',
  'octagon and dot',
);
const rhombus = closet('field: {name: Field, rhombus: 200 mm x 120 mm}', 'rhombus');
const chevron = closet(
  'one: {name: Field, chevron: {read: 400 mm x 90 mm, angle: 60, hand: right}}, other: {name: Other, chevron: {read: 400 mm x 90 mm, angle: 60, hand: left}}',
  'chevron',
);
const round = closet('field: {name: Field, round: 50 mm}', 'penny round');

describe('a tile is told by the measures it is sold by', () => {
  const told = (context: SheetContext) =>
    (materialTally.make(context)[0]!.data as { tiles: { size: string }[] }).tiles[0]!.size;

  test.each([
    ['a rectangle by length and width', rectangle, '300 mm × 200 mm'],
    ['a hexagon by flats and points', hexagon, '200 mm across flats, 230.9 mm across points'],
    ['an octagon by its flats', octagon, '200 mm across flats'],
    ['a rhombus by its diagonals', rhombus, 'diagonals 200 mm and 120 mm'],
    ['a chevron by its own sides and the angle of its ends', chevron, '400 mm × 90 mm, ends at 60°'],
    ['a round one by its diameter', round, '50 mm across'],
  ])('%s', (_, context, size) => expect(told(context)).toBe(size));
});

describe('ten tiles are laid out dry as they can be held against a rule', () => {
  const row = (context: SheetContext) =>
    gates(context)
      .map(({ what, limit }) => `${what}: ${limit}`)
      .find((line) => line.startsWith('Field: ten'));

  // Elementary geometry: the sine of the angle at which a joint is crossed lengthens it and what lies beside it.
  test.each([
    ['in a row', rectangle, 'Field: ten tiles, nine joints: 3018 mm'],
    ['flat to flat', hexagon, 'Field: ten tiles, nine joints: 2018 mm'],
    [
      'one above another: (10 × 90 + 9 × 2) / sin 60°',
      chevron,
      'Field: ten tiles one above another: 1060 mm',
    ],
    [
      'side by side: 10 sides of 116.6 and 9 joints of 2 / 0.8824',
      rhombus,
      'Field: ten tiles side by side, along their edges: 1186.5 mm',
    ],
  ])('%s', (_, context, line) => expect(row(context)).toBe(line));
});

test('where joints cannot be alike, the tile is called by its name', () => {
  const lines = faultLines(octagon, octagon.packet.surfaces[0]!, 'all');
  expect(lines.filter((line) => line.startsWith('Dot is 84 mm.'))).toHaveLength(1);
});
