import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { choiceSheet } from '../../src/sheets/choiceSheet.ts';
import { sheetContext } from '../../src/sheets/SheetContext.ts';
import { readWords } from '../../src/site/words.ts';

const words = readWords(join(import.meta.dirname, '../../layouts/words'));

/** An invented floor of two tiles that take turns, with a doorway; every edge but one leaves a cut. */
const file = `
title: Chequered
revision: {letter: A, date: 2027-03-01}
status: planned
tile:
  white: {name: Chalk white, read: 11 7/8 in x 11 7/8 in}
  black: {name: Soot black, read: 11 7/8 in x 11 7/8 in}
joint: 1/8 in
floor:
  walls: {A-B: 10 ft 3 in, B-C: 8 ft 4 in, C-D: 10 ft 3 in, D-A: 8 ft 4 in}
  doorways:
    hall: {in: A-B, from A: 30 in, clear: 28 in, wall: 4 1/2 in, door line: 2 1/4 in, beyond: wood}
  pattern: {straight: , checker: [white, black]}
`;

const made = makePacket(readJob(file, 'job.yaml').job!);
if ('problems' in made) throw new Error(JSON.stringify(made.problems));
const { packet } = made;
const [surface] = packet.surfaces;

/** How many areas a drawing fills as it fills the second tile of a pattern. */
function toned(svg: string): number {
  const [areas = ''] = /<clipPath id="[^"]*-second">.*?<\/clipPath>/.exec(svg) ?? [];
  return areas.split('M').length - 1;
}

describe('a floor of two tiles that take turns, as the owner is asked about it', () => {
  const data = choiceSheet.make(sheetContext(packet, { lang: 'en', say: words.say('en') }))[0]!.data as {
    plans: readonly string[];
    swatches: readonly { name: string }[];
  };
  const black = (pieces: readonly { readonly tile?: string }[]) =>
    pieces.filter(({ tile }) => tile === 'black').length;

  test('tells the two apart in black and white, in both layouts', () => {
    expect(data.plans.map(toned)).toEqual([black(surface!.pieces), black(surface!.choice!.pieces)]);
    expect(black(surface!.pieces)).toBeGreaterThan(20);
  });

  test('names both in the key', () => {
    expect(data.swatches.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Chalk white', 'Soot black']),
    );
  });
});
